package org.vanewright.installation;

import java.time.Clock;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RevisionRepository;
import org.vanewright.testing.Databases;
import org.vanewright.testing.RepositoryContract;

/** Installations under the contract of every repository of revisions. */
abstract class InstallationRepositoryContract extends RepositoryContract<InstallationDocument> {
    InstallationRepositoryContract(Databases.Engine engine) {
        super(engine, "installation_revision");
    }

    @Override
    protected final RevisionRepository<InstallationDocument> create(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        return new InstallationRepository(jdbc, json, clock);
    }

    @Override
    protected final InstallationDocument content(String name, int variant) {
        InstallationDocument document = Installations.installation(name);
        return new InstallationDocument(
                document.name(),
                "Variant " + variant,
                document.layout(),
                document.adhesive(),
                document.adhesiveClass(),
                document.printRun(),
                document.material(),
                document.installedOn(),
                document.conditions(),
                document.doneBy(),
                document.leftOff(),
                document.tolerances(),
                document.samples(),
                variant % 2 == 0,
                document.provenance(),
                document.photographs());
    }
}
