package org.vanewright.platform.job;

import org.vanewright.testing.Databases;

class H2JobRepositoryTest extends JobRepositoryContract {
    H2JobRepositoryTest() {
        super(Databases.Engine.H2);
    }
}
