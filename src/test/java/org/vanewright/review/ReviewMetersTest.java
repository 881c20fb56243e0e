package org.vanewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import io.micrometer.core.instrument.MeterRegistry;
import org.junit.jupiter.api.Test;
import org.vanewright.record.Backlog;
import org.vanewright.record.Records;
import org.vanewright.testing.ServerTest;

/** What whoever runs the service sees of the queue. */
class ReviewMetersTest extends ServerTest {
    @Test
    void theQueueIsMeasured() {
        Backlog waiting = context().getBean(Records.class).backlog();
        assertThat(waiting.count() > 0).isEqualTo(waiting.oldest() != null);
        MeterRegistry meters = context().getBean(MeterRegistry.class);
        assertThat(meters.get("vanewright.reviews.waiting").gauge().value()).isNotNegative();
        assertThat(meters.get("vanewright.reviews.oldest").gauge().value()).isNotNegative();
    }
}
