package org.vanewright.photograph;

import org.vanewright.testing.Databases;

class PostgresPhotographsTest extends PhotographsContract {
    PostgresPhotographsTest() {
        super(Databases.Engine.POSTGRESQL);
    }
}
