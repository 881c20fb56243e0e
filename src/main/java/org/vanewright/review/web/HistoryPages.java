package org.vanewright.review.web;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.platform.page.Units;
import org.vanewright.record.web.RecordPaths;
import org.vanewright.review.Histories;

/** What became of a record, and from what it was made. */
@Controller
class HistoryPages {
    private static final String AT = "/{plural:[a-z-]+}/" + RecordPaths.SLUG;

    private final Histories histories;

    HistoryPages(Histories histories) {
        this.histories = histories;
    }

    @GetMapping(AT + "/history")
    String history(@PathVariable("plural") String plural, @PathVariable("slug") String slug, Model model) {
        Histories.History history = histories.of(plural, slug);
        model.addAttribute("h", history);
        model.addAttribute("tree", LineageDrawing.svg(history.lineage()));
        return "review/history";
    }

    @GetMapping(AT + "/compare")
    String compare(
            @PathVariable("plural") String plural,
            @PathVariable("slug") String slug,
            @RequestParam("from") int from,
            @RequestParam("to") int to,
            @RequestAttribute("units") Units units,
            Model model) {
        model.addAttribute("h", histories.of(plural, slug));
        model.addAttribute("c", histories.compare(plural, slug, from, to, units));
        return "review/compare";
    }
}
