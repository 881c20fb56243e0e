package org.vanewright.adhesive.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.adhesive.AdhesiveService;
import org.vanewright.adhesive.AdhesiveTrials;
import org.vanewright.platform.page.Units;
import org.vanewright.record.RecordPage;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** Browsing and reading adhesives. */
@Controller
class AdhesivePages {
    private static final int PER_PAGE = 24;

    private final AdhesiveService adhesives;
    private final List<AdhesiveTrials> trials;

    AdhesivePages(AdhesiveService adhesives, List<AdhesiveTrials> trials) {
        this.adhesives = adhesives;
        this.trials = List.copyOf(trials);
    }

    /**
     * An adhesive in the list.
     *
     * @param summary what it is, in a line
     * @param pack what its pack says; null where nothing is recorded
     */
    public record Card(
            Revision<AdhesiveDocument> revision,
            String summary,
            @Nullable String pack) {}

    @GetMapping("/adhesives")
    String browse(@RequestParam(name = "cursor", required = false) @Nullable String cursor, Model model) {
        RecordPage<Revision<AdhesiveDocument>> page = adhesives.list(cursor, PER_PAGE);
        model.addAttribute(
                "cards", page.items().stream().map(AdhesivePages::card).toList());
        model.addAttribute("first", cursor == null);
        model.addAttribute("nextCursor", page.nextCursor());
        return "adhesive/browse";
    }

    private static Card card(Revision<AdhesiveDocument> revision) {
        AdhesiveDocument adhesive = revision.content();
        return new Card(revision, AdhesiveFigures.summary(adhesive), AdhesiveFigures.pack(adhesive.pack()));
    }

    @GetMapping("/adhesives/" + RecordPaths.SLUG)
    String latest(@PathVariable("slug") String slug, @RequestAttribute("units") Units units, Model model) {
        return show(adhesives.shown(slug), units, model);
    }

    @GetMapping("/adhesives/" + RecordPaths.REVISION)
    String revision(
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            @RequestAttribute("units") Units units,
            Model model) {
        return show(adhesives.exactly(new RevisionRef(slug, number)), units, model);
    }

    private String show(Revision<AdhesiveDocument> revision, Units units, Model model) {
        AdhesiveDocument adhesive = revision.content();
        model.addAttribute("revision", revision);
        model.addAttribute("adhesive", adhesive);
        model.addAttribute("summary", AdhesiveFigures.summary(adhesive));
        model.addAttribute("figures", AdhesiveFigures.of(adhesive, units));
        model.addAttribute("pack", AdhesiveFigures.pack(adhesive.pack()));
        model.addAttribute(
                "trials",
                trials.stream().flatMap(t -> t.of(revision.slug()).stream()).toList());
        model.addAttribute("history", adhesives.listedHistory(revision.slug()));
        return "adhesive/show";
    }
}
