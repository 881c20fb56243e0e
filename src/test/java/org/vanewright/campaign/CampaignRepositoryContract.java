package org.vanewright.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionHead;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.RevisionRepository;
import org.vanewright.testing.Databases;
import org.vanewright.testing.RepositoryContract;

/** Campaigns under the contract of every repository of revisions. */
abstract class CampaignRepositoryContract extends RepositoryContract<CampaignDocument> {
    private static final String LAYOUT = "low-wing-pairs-over-the-taper";

    private final HikariDataSource source;
    private final CampaignRepository campaigns;

    CampaignRepositoryContract(Databases.Engine engine) {
        super(engine, "campaign_revision");
        source = Databases.migrated(engine);
        campaigns = Databases.transactional(
                source, jdbc -> new CampaignRepository(jdbc, new CanonicalJson(), Clock.systemUTC()));
    }

    @AfterAll
    void closeOwn() {
        source.close();
    }

    private static CampaignDocument with(CampaignDocument campaign, @Nullable RevisionRef... layouts) {
        List<ConfigurationDocument> all = new ArrayList<>();
        all.add(new ConfigurationDocument("A", "Unmodified", null));
        for (RevisionRef layout : layouts) {
            all.add(new ConfigurationDocument("B" + all.size(), "Fitted", layout));
        }
        PlanDocument p = campaign.plan();
        return new CampaignDocument(
                campaign.name(),
                null,
                new PlanDocument(
                        p.airframe(),
                        p.measure(),
                        all,
                        p.conditions(),
                        p.instruments(),
                        p.roles(),
                        p.repeats(),
                        p.calibration()),
                false);
    }

    @Test
    void campaignsAreFoundByTheLayoutsTheyFly() {
        CampaignDocument plain = content("Found", 1);
        RevisionRef other = new RevisionRef("other-layout", 3);
        Revision<CampaignDocument> both = campaigns.publishNew(
                with(plain, new RevisionRef(LAYOUT, 1), new RevisionRef(LAYOUT, 2), other), "A", null);
        Revision<CampaignDocument> none = campaigns.publishNew(with(plain, (RevisionRef) null), "A", null);
        assertThat(campaigns.withLayout(LAYOUT)).extracting(Revision::ref).containsExactly(both.ref());
        assertThat(campaigns.withLayout("other-layout")).hasSize(1);
        assertThat(campaigns.withLayout("quillmere-tapered-low-wing"))
                .as("the airframe's slug is none of a layout")
                .isEmpty();
        assertThat(campaigns.withLayout("low-wing-pairs")).isEmpty();
        assertThat(campaigns.withLayout("%")).isEmpty();
        Revision<CampaignDocument> next = campaigns.publishNext(both.ref(), with(plain, other), "A");
        assertThat(campaigns.withLayout(LAYOUT)).as("no longer flown").isEmpty();
        assertThat(campaigns.withLayout("other-layout"))
                .extracting(Revision::ref)
                .containsExactly(next.ref());
        assertThat(none.number()).isEqualTo(1);
    }

    /** What was there before the table of layouts is found, too. */
    @Test
    void theMigrationFindsTheLayoutsOfOlderCampaigns() {
        campaigns.publishNew(with(content("Older", 2), new RevisionRef("older-layout", 1)), "A", null);
        JdbcClient jdbc = JdbcClient.create(source);
        jdbc.sql("delete from campaign_layout").update();
        jdbc.sql("insert into layout_revision (slug, revision, state, name, content, sha256, contributor, created_at)"
                        + " values ('older-layout', 1, 'PUBLISHED', 'L', '{}', :hash, 'A', :at)")
                .param("hash", "0".repeat(64))
                .param("at", OffsetDateTime.parse("2026-01-01T00:00:00Z"))
                .update();
        assertThat(campaigns.withLayout("older-layout")).isEmpty();
        jdbc.sql(fromMigration()).update();
        assertThat(campaigns.withLayout("older-layout")).hasSize(1);
    }

    /** And so is the aircraft of older ones, whatever else their text says. */
    @Test
    void campaignsAreFoundByTheirAircraft() {
        CampaignDocument plain = content("Flown", 3);
        RevisionRef airframe = Objects.requireNonNull(plain.plan().airframe());
        Revision<CampaignDocument> one = campaigns.publishNew(plain, "A", null);
        assertThat(campaigns.headsOfAirframe(airframe.slug(), 200))
                .extracting(RevisionHead::ref)
                .contains(one.ref());
        assertThat(campaigns.headsOfAirframe("nobodys-aircraft", 200)).isEmpty();
        JdbcClient jdbc = JdbcClient.create(source);
        jdbc.sql("delete from campaign_airframe").update();
        assertThat(campaigns.headsOfAirframe(airframe.slug(), 200)).isEmpty();
        jdbc.sql(fromMigration("V19__records_of_an_airframe.sql", "insert into campaign_airframe"))
                .update();
        assertThat(campaigns.headsOfAirframe(airframe.slug(), 200))
                .extracting(RevisionHead::ref)
                .contains(one.ref());
    }

    private static String fromMigration() {
        return fromMigration("V15__layouts_that_campaigns_fly.sql", "insert into campaign_layout");
    }

    private static String fromMigration(String name, String statement) {
        try (InputStream file =
                Objects.requireNonNull(CampaignRepository.class.getResourceAsStream("/db/migration/" + name))) {
            String all = new String(file.readAllBytes(), StandardCharsets.UTF_8);
            int from = all.indexOf(statement);
            return all.substring(from, all.indexOf(';', from));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
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
