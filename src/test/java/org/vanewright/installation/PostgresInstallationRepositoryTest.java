package org.vanewright.installation;

import org.vanewright.testing.Databases;

class PostgresInstallationRepositoryTest extends InstallationRepositoryContract {
    PostgresInstallationRepositoryTest() {
        super(Databases.Engine.POSTGRESQL);
    }
}
