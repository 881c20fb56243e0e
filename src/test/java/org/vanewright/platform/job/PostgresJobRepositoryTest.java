package org.vanewright.platform.job;

import org.vanewright.testing.Databases;

class PostgresJobRepositoryTest extends JobRepositoryContract {
    PostgresJobRepositoryTest() {
        super(Databases.Engine.POSTGRESQL);
    }
}
