package org.vanewright.layout;

import org.vanewright.testing.Databases;

class H2LayoutRepositoryTest extends LayoutRepositoryContract {
    H2LayoutRepositoryTest() {
        super(Databases.Engine.H2);
    }
}
