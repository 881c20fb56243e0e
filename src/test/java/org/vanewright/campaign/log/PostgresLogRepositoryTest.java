package org.vanewright.campaign.log;

import org.vanewright.testing.Databases;

class PostgresLogRepositoryTest extends LogRepositoryContract {
    PostgresLogRepositoryTest() {
        super(Databases.Engine.POSTGRESQL);
    }
}
