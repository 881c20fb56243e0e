package org.vanewright.device;

import java.time.Clock;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RevisionRepository;

@Repository
class DeviceRepository extends RevisionRepository<DeviceDocument> {
    DeviceRepository(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        super(jdbc, json, clock, "device_revision", DeviceDocument.class);
    }
}
