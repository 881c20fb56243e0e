package org.vanewright.record;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What waits for a review.
 *
 * @param count of submissions
 * @param oldest when the one that waits longest was submitted; null where nothing waits
 */
public record Backlog(long count, @Nullable Instant oldest) {
    public static final Backlog NONE = new Backlog(0, null);

    /** Both together. */
    public Backlog plus(Backlog other) {
        Instant first = oldest == null || other.oldest != null && other.oldest.isBefore(oldest) ? other.oldest : oldest;
        return new Backlog(count + other.count, first);
    }
}
