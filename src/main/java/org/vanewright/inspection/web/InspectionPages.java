package org.vanewright.inspection.web;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.inspection.InspectionDocument;
import org.vanewright.inspection.InspectionService;
import org.vanewright.inspection.LossState;
import org.vanewright.platform.page.Numbers;
import org.vanewright.record.RecordPage;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** Browsing and reading inspections. */
@Controller
class InspectionPages {
    private static final int PER_PAGE = 24;

    private final InspectionService inspections;

    InspectionPages(InspectionService inspections) {
        this.inspections = inspections;
    }

    /**
     * An inspection in the list.
     *
     * @param installationName what was looked at
     * @param found in words
     */
    public record Card(Revision<InspectionDocument> revision, String installationName, String found) {}

    @GetMapping("/inspections")
    String browse(@RequestParam(name = "cursor", required = false) @Nullable String cursor, Model model) {
        RecordPage<Revision<InspectionDocument>> page = inspections.list(cursor, PER_PAGE);
        Map<RevisionRef, String> names = inspections.installationNames(page.items());
        model.addAttribute(
                "cards", page.items().stream().map(r -> card(r, names)).toList());
        model.addAttribute("first", cursor == null);
        model.addAttribute("nextCursor", page.nextCursor());
        return "inspection/browse";
    }

    private static Card card(Revision<InspectionDocument> revision, Map<RevisionRef, String> names) {
        RevisionRef installation = revision.content().installation();
        String name = installation == null ? null : names.get(installation);
        return new Card(revision, name == null ? "an unknown installation" : name, found(revision.content()));
    }

    /** Such as "25 h flown: 1 missing, 2 loose". */
    private static String found(InspectionDocument inspection) {
        Double hours = inspection.hoursFlown();
        int missing = inspection.count(LossState.MISSING);
        int loose = inspection.count(LossState.LOOSE);
        return Numbers.trimmed(hours == null ? 0 : hours, 1) + " h flown: "
                + (missing + loose == 0 ? "everything in place" : missing + " missing, " + loose + " loose");
    }

    @GetMapping("/inspections/" + RecordPaths.SLUG)
    String latest(@PathVariable("slug") String slug, Model model) {
        return show(inspections.shown(slug), model);
    }

    @GetMapping("/inspections/" + RecordPaths.REVISION)
    String revision(@PathVariable("slug") String slug, @PathVariable("number") int number, Model model) {
        return show(inspections.exactly(new RevisionRef(slug, number)), model);
    }

    private String show(Revision<InspectionDocument> revision, Model model) {
        model.addAttribute("revision", revision);
        model.addAttribute("inspection", revision.content());
        model.addAttribute(
                "installation", inspections.installation(revision.content()).orElse(null));
        model.addAttribute("found", found(revision.content()));
        model.addAttribute("history", inspections.listedHistory(revision.slug()));
        return "inspection/show";
    }
}
