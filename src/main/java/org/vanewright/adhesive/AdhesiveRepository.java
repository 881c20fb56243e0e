package org.vanewright.adhesive;

import java.time.Clock;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RevisionRepository;

@Repository
class AdhesiveRepository extends RevisionRepository<AdhesiveDocument> {
    AdhesiveRepository(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        super(jdbc, json, clock, "adhesive_revision", AdhesiveDocument.class);
    }
}
