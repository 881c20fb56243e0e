package org.vanewright.device;

import java.time.Clock;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.engineering.solid.DeviceDesign.Base;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.DeviceDesign.Planform;
import org.vanewright.engineering.solid.DeviceDesign.Vane;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RevisionRepository;
import org.vanewright.testing.Databases;
import org.vanewright.testing.RepositoryContract;

/** What the repository of devices keeps, on any database. */
abstract class DeviceRepositoryCases extends RepositoryContract<DeviceDocument> {
    DeviceRepositoryCases(Databases.Engine engine) {
        super(engine, "device_revision");
    }

    @Override
    protected RevisionRepository<DeviceDocument> create(JdbcClient jdbc, CanonicalJson json, Clock clock) {
        return new DeviceRepository(jdbc, json, clock);
    }

    @Override
    protected DeviceDocument content(String name, int variant) {
        Vane vane =
                new Vane(Planform.RECTANGULAR, 8 + variant / 3.0, 20.0, 1.2, null, null, null, null, null, null, null);
        Base base = new Base(null, 30.0, 16.0, 1.0, null, null, null, null);
        return new DeviceDocument(
                name, "“quoted” — ünïcode", vane, new Pair(15.0, 20.0), base, variant % 2 == 0, null, 1040.0, true);
    }
}
