package org.vanewright.printrun;

import org.vanewright.testing.Databases;

class H2PrintRunRepositoryTest extends PrintRunRepositoryContract {
    H2PrintRunRepositoryTest() {
        super(Databases.Engine.H2);
    }
}
