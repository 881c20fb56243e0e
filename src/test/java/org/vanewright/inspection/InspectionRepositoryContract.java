package org.vanewright.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.RevisionRepository;
import org.vanewright.testing.Databases;
import org.vanewright.testing.RepositoryContract;

/** Inspections under the contract of every repository of revisions. */
abstract class InspectionRepositoryContract extends RepositoryContract<InspectionDocument> {
    private @Nullable InspectionRepository inspections;

    InspectionRepositoryContract(Databases.Engine engine) {
        super(engine, "inspection_revision");
    }

    @Override
    protected final RevisionRepository<InspectionDocument> create(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        inspections = new InspectionRepository(jdbc, json, clock);
        return inspections;
    }

    @Override
    protected final InspectionDocument content(String name, int variant) {
        return Inspections.inspection(name, new RevisionRef("pairs", 1), "2026-05-09", 10 + variant);
    }

    @Test
    void thoseOfAnInstallationAreFoundByItsSlugAlone() {
        if (inspections == null) {
            throw new AssertionError("made with the contract");
        }
        inspections.publishNew(content("Kite", 1), "Club", null);
        Revision<InspectionDocument> second = inspections.publishNew(
                Inspections.inspection("Second", new RevisionRef("pairs", 2), "2026-06-01", 20), "Club", null);
        inspections.publishNew(
                Inspections.inspection("Other", new RevisionRef("pairs-2", 1), "2026-06-01", 20), "Club", null);
        assertThat(inspections.ofInstallation("pairs")).hasSize(2).contains(second);
        assertThat(inspections.ofInstallation("pairs-2")).hasSize(1);
        assertThat(inspections.ofInstallation("%")).isEmpty();
        assertThat(inspections.ofInstallations(List.of("pairs", "pairs-2"))).hasSize(3);
    }
}
