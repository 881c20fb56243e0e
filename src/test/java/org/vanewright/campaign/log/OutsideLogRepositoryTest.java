package org.vanewright.campaign.log;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.vanewright.platform.attachment.TestBucket;
import org.vanewright.testing.Databases;

/** Logs whose bytes lie in object storage. */
class OutsideLogRepositoryTest extends LogRepositoryContract {
    private static final TestBucket BUCKET = TestBucket.start();

    OutsideLogRepositoryTest() {
        super(Databases.Engine.POSTGRESQL, BUCKET.attachments());
    }

    @AfterAll
    static void stop() {
        BUCKET.close();
    }

    @AfterEach
    void nothingStandsInRows() {
        assertThat(database()
                        .sql("select count(*) from flight_log_part where content is not null")
                        .query(Long.class)
                        .single())
                .isZero();
        assertThat(BUCKET.refused()).isEmpty();
        BUCKET.empty();
    }
}
