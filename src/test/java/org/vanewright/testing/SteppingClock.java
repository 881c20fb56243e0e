package org.vanewright.testing;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands until it is moved. */
public final class SteppingClock extends Clock {
    private Instant now = Instant.parse("2026-03-01T09:00:00.123456Z");

    public synchronized void advance(Duration step) {
        now = now.plus(step);
    }

    @Override
    public synchronized Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return Clock.fixed(instant(), zone);
    }
}
