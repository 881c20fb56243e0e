package org.vanewright.review;

import org.vanewright.testing.Databases;

class H2ReviewStoreTest extends ReviewStoreCases {
    H2ReviewStoreTest() {
        super(Databases.Engine.H2);
    }
}
