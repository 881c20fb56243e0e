package org.vanewright.record;

import org.vanewright.testing.Databases;

class H2WorkflowTest extends WorkflowCases {
    H2WorkflowTest() {
        super(Databases.Engine.H2);
    }
}
