package org.vanewright.printrun;

import java.time.Clock;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RevisionRepository;
import org.vanewright.testing.Databases;
import org.vanewright.testing.RepositoryContract;

/** Print runs under the contract of every repository of revisions. */
abstract class PrintRunRepositoryContract extends RepositoryContract<PrintRunDocument> {
    PrintRunRepositoryContract(Databases.Engine engine) {
        super(engine, "print_run_revision");
    }

    @Override
    protected final RevisionRepository<PrintRunDocument> create(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        return new PrintRunRepository(jdbc, json, clock);
    }

    @Override
    protected final PrintRunDocument content(String name, int variant) {
        return PrintRuns.run(
                name,
                PrintRuns.outcome(16 + variant, new DefectDocument(DefectKind.WARPED, 1)),
                PrintRuns.heights(7.9, 8.1 + variant / 10.0));
    }
}
