package org.vanewright.installation.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.installation.InspectionHistory;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.installation.InstallationService;
import org.vanewright.platform.page.Numbers;
import org.vanewright.record.RecordPage;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** Browsing and reading installations. */
@Controller
class InstallationPages {
    private static final int PER_PAGE = 12;

    private final InstallationService installations;
    private final List<InspectionHistory> histories;

    InstallationPages(InstallationService installations, List<InspectionHistory> histories) {
        this.installations = installations;
        this.histories = List.copyOf(histories);
    }

    /**
     * An installation in the list.
     *
     * @param layoutName what was put on
     * @param since what inspections found, in words
     */
    public record Card(Revision<InstallationDocument> revision, String layoutName, String since) {}

    @GetMapping("/installations")
    String browse(@RequestParam(name = "cursor", required = false) @Nullable String cursor, Model model) {
        RecordPage<Revision<InstallationDocument>> page = installations.list(cursor, PER_PAGE);
        model.addAttribute("cards", cards(page.items()));
        model.addAttribute("first", cursor == null);
        model.addAttribute("nextCursor", page.nextCursor());
        return "installation/browse";
    }

    private List<Card> cards(List<Revision<InstallationDocument>> shown) {
        Map<RevisionRef, String> layouts = installations.layoutNames(shown);
        List<String> slugs = shown.stream().map(Revision::slug).toList();
        Map<String, List<InspectionHistory.Seen>> seen = new HashMap<>();
        histories.forEach(h -> seen.putAll(h.of(slugs)));
        return shown.stream()
                .map(r -> {
                    RevisionRef layout = r.content().layout();
                    String name = layout == null ? null : layouts.get(layout);
                    return new Card(
                            r,
                            name == null ? "an unknown layout" : name,
                            since(seen.getOrDefault(r.slug(), List.of())));
                })
                .toList();
    }

    private List<InspectionHistory.Seen> inspections(String slug) {
        return histories.stream().flatMap(h -> h.of(slug).stream()).toList();
    }

    private static String since(List<InspectionHistory.Seen> seen) {
        if (seen.isEmpty()) {
            return "not inspected yet";
        }
        int lost = seen.stream().mapToInt(s -> s.missing() + s.loose()).sum();
        String hours = Numbers.trimmed(seen.get(seen.size() - 1).hoursFlown(), 1);
        return hours + " h flown, " + seen.size() + (seen.size() == 1 ? " inspection, " : " inspections, ")
                + (lost == 0 ? "nothing missing or loose" : lost + " found missing or loose");
    }

    @GetMapping("/installations/" + RecordPaths.SLUG)
    String latest(@PathVariable("slug") String slug, Model model) {
        return show(installations.shown(slug), model);
    }

    @GetMapping("/installations/" + RecordPaths.REVISION)
    String revision(@PathVariable("slug") String slug, @PathVariable("number") int number, Model model) {
        return show(installations.exactly(new RevisionRef(slug, number)), model);
    }

    private String show(Revision<InstallationDocument> revision, Model model) {
        InstallationDocument installation = revision.content();
        List<InspectionHistory.Seen> seen = inspections(revision.slug());
        model.addAttribute("revision", revision);
        model.addAttribute("installation", installation);
        model.addAttribute("layout", installations.layout(installation).orElse(null));
        model.addAttribute("printRun", installations.printRun(installation).orElse(null));
        model.addAttribute("adhesive", installations.adhesive(installation).orElse("unknown"));
        model.addAttribute(
                "warning", installations.temperatureWarning(installation).orElse(null));
        model.addAttribute("material", installations.material(installation).orElse("unknown"));
        model.addAttribute(
                "samples",
                installations
                        .fitting(installation)
                        .map(f -> SampleView.of(installation, f))
                        .orElse(null));
        model.addAttribute("inspections", seen);
        model.addAttribute("since", since(seen));
        model.addAttribute("history", installations.listedHistory(revision.slug()));
        return "installation/show";
    }
}
