package org.vanewright.inspection;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.installation.InspectionHistory;
import org.vanewright.record.Revision;

/** What installations are told of their inspections. */
@Component
class PublishedInspections implements InspectionHistory {
    private final InspectionService inspections;

    PublishedInspections(InspectionService inspections) {
        this.inspections = inspections;
    }

    @Override
    public List<Seen> of(String installationSlug) {
        return inspections.of(installationSlug).stream()
                .map(PublishedInspections::seen)
                .toList();
    }

    private static Seen seen(Revision<InspectionDocument> revision) {
        InspectionDocument inspection = revision.content();
        Double hours = inspection.hoursFlown();
        return new Seen(
                inspection.name(),
                "/inspections/" + revision.slug() + "/revisions/" + revision.number(),
                String.valueOf(inspection.inspectedOn()),
                hours == null ? 0 : hours,
                inspection.count(LossState.MISSING),
                inspection.count(LossState.LOOSE),
                inspection.invented());
    }
}
