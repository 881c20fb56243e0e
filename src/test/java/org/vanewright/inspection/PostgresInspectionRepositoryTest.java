package org.vanewright.inspection;

import org.vanewright.testing.Databases;

class PostgresInspectionRepositoryTest extends InspectionRepositoryContract {
    PostgresInspectionRepositoryTest() {
        super(Databases.Engine.POSTGRESQL);
    }
}
