package org.vanewright.installation;

import org.vanewright.testing.Databases;

class H2InstallationRepositoryTest extends InstallationRepositoryContract {
    H2InstallationRepositoryTest() {
        super(Databases.Engine.H2);
    }
}
