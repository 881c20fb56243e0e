package org.vanewright.airframe;

import java.time.Clock;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RevisionRepository;

@Repository
class AirframeRepository extends RevisionRepository<AirframeDocument> {
    AirframeRepository(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        super(jdbc, json, clock, "airframe_revision", AirframeDocument.class);
    }
}
