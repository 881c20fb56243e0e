package org.vanewright.device;

import org.vanewright.testing.Databases;

class PostgresDeviceRepositoryTest extends DeviceRepositoryCases {
    PostgresDeviceRepositoryTest() {
        super(Databases.Engine.POSTGRESQL);
    }
}
