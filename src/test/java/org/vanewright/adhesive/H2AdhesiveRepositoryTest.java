package org.vanewright.adhesive;

import org.vanewright.testing.Databases;

class H2AdhesiveRepositoryTest extends AdhesiveRepositoryCases {
    H2AdhesiveRepositoryTest() {
        super(Databases.Engine.H2);
    }
}
