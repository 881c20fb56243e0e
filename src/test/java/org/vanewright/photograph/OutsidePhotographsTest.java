package org.vanewright.photograph;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.vanewright.platform.attachment.TestBucket;
import org.vanewright.testing.Databases;

/** Photographs whose bytes lie in object storage. */
class OutsidePhotographsTest extends PhotographsContract {
    private static final TestBucket BUCKET = TestBucket.start();

    OutsidePhotographsTest() {
        super(Databases.Engine.H2, BUCKET.attachments());
    }

    @AfterAll
    static void stop() {
        BUCKET.close();
    }

    /** Of whatever a test has added. */
    @AfterEach
    void nothingStandsInRows() {
        assertThat(database()
                        .sql("select count(*) from photograph where large is not null or small is not null")
                        .query(Long.class)
                        .single())
                .isZero();
        assertThat(BUCKET.keys())
                .hasSize(2
                        * database()
                                .sql("select count(*) from photograph")
                                .query(Integer.class)
                                .single());
        BUCKET.empty();
    }
}
