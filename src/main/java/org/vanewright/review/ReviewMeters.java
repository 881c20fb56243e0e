package org.vanewright.review;

import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.LoadingCache;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.time.Clock;
import java.time.Duration;
import org.springframework.stereotype.Component;
import org.vanewright.record.Backlog;
import org.vanewright.record.Records;

/** How long the queue of reviews is, and how old. */
@Component
class ReviewMeters implements MeterBinder {
    /** So that the measures read together ask the database once. */
    private static final Duration FRESH = Duration.ofSeconds(5);

    private final LoadingCache<String, Backlog> waiting;
    private final Clock clock;

    ReviewMeters(Records records, Clock clock) {
        this.clock = clock;
        waiting = Caffeine.newBuilder().expireAfterWrite(FRESH).build(ignored -> records.backlog());
    }

    @Override
    public void bindTo(MeterRegistry meters) {
        Gauge.builder("vanewright.reviews.waiting", () -> backlog().count())
                .description("Submissions that wait for a review")
                .register(meters);
        Gauge.builder("vanewright.reviews.oldest", this::secondsOfOldest)
                .description("For how long the oldest of them has waited")
                .baseUnit("seconds")
                .register(meters);
    }

    private Backlog backlog() {
        return waiting.get("");
    }

    private double secondsOfOldest() {
        Backlog now = backlog();
        return now.oldest() == null
                ? 0
                : Duration.between(now.oldest(), clock.instant()).toMillis() / 1000.0;
    }
}
