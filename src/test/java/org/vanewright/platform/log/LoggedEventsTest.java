package org.vanewright.platform.log;

import static org.assertj.core.api.Assertions.assertThat;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import org.junit.jupiter.api.Test;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

class LoggedEventsTest {
    private static final Logger LOG = LoggerFactory.getLogger(LoggedEventsTest.class);

    private final SimpleMeterRegistry meters = new SimpleMeterRegistry();

    private double count(String level) {
        return meters.get("logback.events").tag("level", level).counter().count();
    }

    @Test
    void warningsAndErrorsAreCountedUntilTheServiceStops() {
        LoggedEvents events = new LoggedEvents(meters);
        LOG.info("nothing to count");
        LOG.warn("counted, for a test");
        LOG.error("counted, for a test");
        LOG.error("counted, for a test");
        // What else runs in this process may log, too.
        assertThat(count("warn")).isGreaterThanOrEqualTo(1);
        assertThat(count("error")).isGreaterThanOrEqualTo(2);
        events.stop();
        double before = count("error");
        LOG.error("not counted any more, for a test");
        assertThat(count("error")).isEqualTo(before);
    }
}
