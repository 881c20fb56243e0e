package org.vanewright.catalogue.search;

import org.vanewright.testing.Databases;

class H2SearchTest extends SearchContract {
    H2SearchTest() {
        super(Databases.Engine.H2);
    }
}
