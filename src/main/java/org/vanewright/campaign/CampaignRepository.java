package org.vanewright.campaign;

import java.time.Clock;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RevisionRepository;

@Repository
class CampaignRepository extends RevisionRepository<CampaignDocument> {
    CampaignRepository(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        super(jdbc, json, clock, "campaign_revision", CampaignDocument.class);
    }
}
