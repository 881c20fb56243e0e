package org.vanewright.layout.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.engineering.drawing.sheet.Paper;
import org.vanewright.layout.FlightEvidence;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.page.Units;
import org.vanewright.record.RecordPage;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** Browsing and reading layouts. */
@Controller
class LayoutPages {
    private static final int PER_PAGE = 12;

    private final LayoutService layouts;
    private final LayoutPlanner planner;
    private final LayoutCards cards;
    private final List<FlightEvidence> evidence;

    LayoutPages(LayoutService layouts, LayoutPlanner planner, LayoutCards cards, List<FlightEvidence> evidence) {
        this.layouts = layouts;
        this.planner = planner;
        this.cards = cards;
        this.evidence = List.copyOf(evidence);
    }

    @GetMapping("/layouts")
    String browse(@RequestParam(name = "cursor", required = false) @Nullable String cursor, Model model) {
        RecordPage<Revision<LayoutDocument>> page = layouts.list(cursor, PER_PAGE);
        model.addAttribute("cards", cards.of(page.items()));
        model.addAttribute("first", cursor == null);
        model.addAttribute("nextCursor", page.nextCursor());
        return "layout/browse";
    }

    private List<FlightEvidence.FlownResult> flown(Revision<LayoutDocument> revision) {
        return evidence.stream().flatMap(e -> e.of(revision.slug()).stream()).toList();
    }

    @GetMapping("/layouts/" + RecordPaths.SLUG)
    String latest(@PathVariable("slug") String slug, @RequestAttribute("units") Units units, Model model) {
        return show(layouts.shown(slug), units, model);
    }

    @GetMapping("/layouts/" + RecordPaths.REVISION)
    String revision(
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            @RequestAttribute("units") Units units,
            Model model) {
        return show(layouts.exactly(new RevisionRef(slug, number)), units, model);
    }

    private String show(Revision<LayoutDocument> revision, Units units, Model model) {
        LayoutPlan plan = planner.plan(revision.content());
        model.addAttribute("revision", revision);
        model.addAttribute("layout", revision.content());
        model.addAttribute("airframe", plan.airframe());
        LayoutView view = LayoutDrawings.view(revision, plan, units);
        model.addAttribute("view", view);
        model.addAttribute("stations", StationRows.of(view.stations(), units));
        model.addAttribute("flown", flown(revision));
        model.addAttribute("papers", List.of(Paper.values()));
        model.addAttribute("method", StationTable.METHOD);
        model.addAttribute("history", layouts.listedHistory(revision.slug()));
        return "layout/show";
    }
}
