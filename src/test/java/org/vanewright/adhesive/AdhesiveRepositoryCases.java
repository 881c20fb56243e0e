package org.vanewright.adhesive;

import java.time.Clock;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RevisionRepository;
import org.vanewright.testing.Databases;
import org.vanewright.testing.RepositoryContract;

/** What the repository of adhesives keeps, on any database. */
abstract class AdhesiveRepositoryCases extends RepositoryContract<AdhesiveDocument> {
    AdhesiveRepositoryCases(Databases.Engine engine) {
        super(engine, "adhesive_revision");
    }

    @Override
    protected RevisionRepository<AdhesiveDocument> create(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        return new AdhesiveRepository(jdbc, json, clock);
    }

    @Override
    protected AdhesiveDocument content(String name, int variant) {
        return Adhesives.of(name, variant % 2 == 0 ? Carrier.FOAM : Carrier.GEL, 1 + variant / 3.0, 15.0);
    }
}
