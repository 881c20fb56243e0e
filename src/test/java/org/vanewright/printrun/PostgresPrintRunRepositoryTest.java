package org.vanewright.printrun;

import org.vanewright.testing.Databases;

class PostgresPrintRunRepositoryTest extends PrintRunRepositoryContract {
    PostgresPrintRunRepositoryTest() {
        super(Databases.Engine.POSTGRESQL);
    }
}
