package org.vanewright.campaign;

import java.time.Clock;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRepository;

@Repository
class CampaignRepository extends RevisionRepository<CampaignDocument> {
    private static final int MOST = 200;

    CampaignRepository(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        super(jdbc, json, clock, "campaign_revision", CampaignDocument.class);
    }

    /** Published campaigns with any revision of a layout, newest first. */
    public List<Revision<CampaignDocument>> withLayout(String layoutSlug) {
        if (!layoutSlug.matches("[a-z0-9-]{1,80}")) {
            return List.of();
        }
        // Properties of canonical JSON stand in the order of their names.
        return publishedLike("%\"layout\":{\"revision\":%,\"slug\":\"" + layoutSlug + "\"}%", MOST).stream()
                .filter(r -> r.content().plan().configurations().stream()
                        .anyMatch(c -> c.layout() != null && c.layout().slug().equals(layoutSlug)))
                .toList();
    }
}
