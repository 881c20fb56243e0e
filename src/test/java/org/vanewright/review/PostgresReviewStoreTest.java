package org.vanewright.review;

import org.vanewright.testing.Databases;

class PostgresReviewStoreTest extends ReviewStoreCases {
    PostgresReviewStoreTest() {
        super(Databases.Engine.POSTGRESQL);
    }
}
