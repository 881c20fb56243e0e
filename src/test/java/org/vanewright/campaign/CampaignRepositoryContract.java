package org.vanewright.campaign;

import java.time.Clock;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RevisionRepository;
import org.vanewright.testing.Databases;
import org.vanewright.testing.RepositoryContract;

/** Campaigns under the contract of every repository of revisions. */
abstract class CampaignRepositoryContract extends RepositoryContract<CampaignDocument> {
    CampaignRepositoryContract(Databases.Engine engine) {
        super(engine, "campaign_revision");
    }

    @Override
    protected final RevisionRepository<CampaignDocument> create(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        return new CampaignRepository(jdbc, json, clock);
    }

    @Override
    protected final CampaignDocument content(String name, int variant) {
        return new CampaignDocument(
                name,
                "Variant " + variant,
                Campaigns.plan(Measure.STALL_SPEED, FlyingOrder.INTERLEAVED),
                List.of(
                        Campaigns.stall("a", "A", 1, 46.5 + variant, 555, 0.9),
                        Campaigns.run("b", 60, List.of(new LegDocument(61.5, 12.0, null)))),
                List.of(new HandlingDocument("A", "Turn \"é\"", 4, null)),
                List.of(),
                variant % 2 == 0,
                List.of(),
                List.of());
    }
}
