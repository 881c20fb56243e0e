package org.vanewright.inspection;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
    public Map<String, List<Seen>> of(Collection<String> installationSlugs) {
        Map<String, List<Seen>> seen = new HashMap<>();
        inspections
                .of(installationSlugs)
                .forEach((slug, found) -> seen.put(
                        slug, found.stream().map(PublishedInspections::seen).toList()));
        return seen;
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
