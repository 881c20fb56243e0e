package org.vanewright.installsheet.web;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.adhesive.AdhesiveService;
import org.vanewright.engineering.drawing.sheet.Paper;
import org.vanewright.engineering.placement.PlacementTolerance;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.installsheet.InstallFacts;
import org.vanewright.installsheet.InstallSheets;
import org.vanewright.installsheet.SetMass;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.layout.RowDocument;
import org.vanewright.platform.form.Option;
import org.vanewright.printrun.PrintRunDocument;
import org.vanewright.printrun.PrintRunService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** Where the install sheet's adhesive, print run, wing and paper are chosen. */
@Controller
class InstallSheetPages {
    private static final int MOST = 100;

    private final LayoutService layouts;
    private final AdhesiveService adhesives;
    private final PrintRunService runs;
    private final InstallSheets sheets;

    InstallSheetPages(LayoutService layouts, AdhesiveService adhesives, PrintRunService runs, InstallSheets sheets) {
        this.layouts = layouts;
        this.adhesives = adhesives;
        this.runs = runs;
        this.sheets = sheets;
    }

    @GetMapping("/layouts/" + RecordPaths.SLUG + "/install-sheet")
    String page(
            @PathVariable("slug") String slug,
            @RequestParam(name = "revision", required = false) @Nullable Integer revision,
            Model model) {
        Revision<LayoutDocument> layout =
                revision == null ? layouts.shown(slug) : layouts.exactly(new RevisionRef(slug, revision));
        InstallFacts facts = sheets.of(layout, null, null, null);
        model.addAttribute("revision", layout);
        model.addAttribute("layout", layout.content());
        model.addAttribute("facts", facts);
        model.addAttribute("adhesives", adhesives());
        model.addAttribute("runs", runs(layout.content()));
        model.addAttribute("massMethod", SetMass.METHOD);
        model.addAttribute("toleranceMethod", PlacementTolerance.METHOD);
        model.addAttribute("papers", List.of(Paper.A4, Paper.LETTER, Paper.A3, Paper.TABLOID));
        model.addAttribute(
                "wings",
                facts.sample().stream().map(s -> s.wing()).distinct().count() < 2 ? List.of() : List.of(Wing.values()));
        return "installsheet/sheet";
    }

    private List<Option> adhesives() {
        return adhesives.list(null, MOST).items().stream()
                .map(a -> new Option(a.slug(), a.printedName()))
                .toList();
    }

    /** Those of a device that this layout carries. */
    private List<Option> runs(LayoutDocument layout) {
        List<String> devices = layout.rows().stream()
                .map(RowDocument::device)
                .flatMap(Stream::ofNullable)
                .map(RevisionRef::slug)
                .toList();
        List<Option> options = new ArrayList<>();
        for (Revision<PrintRunDocument> run : runs.list(null, MOST).items()) {
            RevisionRef device = run.content().device();
            if (device != null && devices.contains(device.slug())) {
                options.add(new Option(run.slug(), run.printedName()));
            }
        }
        return options;
    }
}
