package org.vanewright.adhesive;

import org.vanewright.testing.Databases;

class PostgresAdhesiveRepositoryTest extends AdhesiveRepositoryCases {
    PostgresAdhesiveRepositoryTest() {
        super(Databases.Engine.POSTGRESQL);
    }
}
