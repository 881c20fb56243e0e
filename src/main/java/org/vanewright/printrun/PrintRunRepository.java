package org.vanewright.printrun;

import java.time.Clock;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RevisionRepository;

@Repository
class PrintRunRepository extends RevisionRepository<PrintRunDocument> {
    PrintRunRepository(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        super(jdbc, json, clock, "print_run_revision", PrintRunDocument.class);
    }
}
