package org.vanewright.inspection;

import java.time.Clock;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRepository;

@Repository
class InspectionRepository extends RevisionRepository<InspectionDocument> {
    private static final int MOST = 20_000;

    InspectionRepository(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        super(jdbc, json, clock, "inspection_revision", InspectionDocument.class);
    }

    /** Published inspections of any revision of an installation, in no order. */
    public List<Revision<InspectionDocument>> ofInstallation(String slug) {
        if (!slug.matches("[a-z0-9-]{1,80}")) {
            return List.of();
        }
        // Properties of canonical JSON stand in the order of their names.
        return publishedLike("%\"installation\":{\"revision\":%,\"slug\":\"" + slug + "\"}%", MOST).stream()
                .filter(r -> r.content().installation() != null
                        && r.content().installation().slug().equals(slug))
                .toList();
    }

    /** All published inspections, newest first. */
    public List<Revision<InspectionDocument>> allPublished() {
        return publishedLike("%", MOST);
    }
}
