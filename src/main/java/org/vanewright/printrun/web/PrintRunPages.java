package org.vanewright.printrun.web;

import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.PrintMaterial;
import org.vanewright.printrun.PrintRunDocument;
import org.vanewright.printrun.PrintRunService;
import org.vanewright.record.RecordPage;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** Browsing and reading print runs. */
@Controller
class PrintRunPages {
    private static final int PER_PAGE = 12;

    private final PrintRunService runs;

    PrintRunPages(PrintRunService runs) {
        this.runs = runs;
    }

    /** A run in the list, with the name of what was printed. */
    public record Card(Revision<PrintRunDocument> revision, String deviceName, RunView result) {}

    @GetMapping("/print-runs")
    String browse(@RequestParam(name = "cursor", required = false) @Nullable String cursor, Model model) {
        RecordPage<Revision<PrintRunDocument>> page = runs.list(cursor, PER_PAGE);
        model.addAttribute("cards", page.items().stream().map(this::card).toList());
        model.addAttribute("first", cursor == null);
        model.addAttribute("nextCursor", page.nextCursor());
        return "print-run/browse";
    }

    private Card card(Revision<PrintRunDocument> revision) {
        Revision<DeviceDocument> device = runs.device(revision.content()).orElse(null);
        return new Card(
                revision,
                device == null ? "an unknown device" : device.content().name(),
                RunView.of(revision.content(), device));
    }

    @GetMapping("/print-runs/" + RecordPaths.SLUG)
    String latest(@PathVariable("slug") String slug, Model model) {
        return show(runs.shown(slug), model);
    }

    @GetMapping("/print-runs/" + RecordPaths.REVISION)
    String revision(@PathVariable("slug") String slug, @PathVariable("number") int number, Model model) {
        return show(runs.exactly(new RevisionRef(slug, number)), model);
    }

    private String show(Revision<PrintRunDocument> revision, Model model) {
        PrintRunDocument run = revision.content();
        Revision<DeviceDocument> device = runs.device(run).orElse(null);
        PrintMaterial material = run.printing().material();
        model.addAttribute("revision", revision);
        model.addAttribute("run", run);
        model.addAttribute("device", device);
        model.addAttribute("layout", runs.layout(run).orElse(null));
        model.addAttribute("result", RunView.of(run, device));
        model.addAttribute("heat", material == null ? null : HeatView.of(material, SunForm.usual()));
        model.addAttribute("heatMethod", HeatView.METHOD);
        model.addAttribute("history", runs.listedHistory(revision.slug()));
        return "print-run/show";
    }
}
