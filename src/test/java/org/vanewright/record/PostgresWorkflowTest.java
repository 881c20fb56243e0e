package org.vanewright.record;

import org.vanewright.testing.Databases;

class PostgresWorkflowTest extends WorkflowCases {
    PostgresWorkflowTest() {
        super(Databases.Engine.POSTGRESQL);
    }
}
