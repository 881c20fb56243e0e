package org.vanewright.device;

import org.vanewright.testing.Databases;

class H2DeviceRepositoryTest extends DeviceRepositoryCases {
    H2DeviceRepositoryTest() {
        super(Databases.Engine.H2);
    }
}
