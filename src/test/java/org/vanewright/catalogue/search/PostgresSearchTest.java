package org.vanewright.catalogue.search;

import org.vanewright.testing.Databases;

class PostgresSearchTest extends SearchContract {
    PostgresSearchTest() {
        super(Databases.Engine.POSTGRESQL);
    }
}
