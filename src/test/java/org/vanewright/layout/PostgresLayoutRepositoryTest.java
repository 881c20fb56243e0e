package org.vanewright.layout;

import org.vanewright.testing.Databases;

class PostgresLayoutRepositoryTest extends LayoutRepositoryContract {
    PostgresLayoutRepositoryTest() {
        super(Databases.Engine.POSTGRESQL);
    }
}
