package org.vanewright.layout;

import java.time.Clock;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RevisionRepository;

@Repository
class LayoutRepository extends RevisionRepository<LayoutDocument> {
    LayoutRepository(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        super(jdbc, json, clock, "layout_revision", LayoutDocument.class);
    }
}
