package org.vanewright.record;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A draft in a list.
 *
 * @param name as its content says; may be empty
 * @param base the public revision that it changes
 * @param submitted the revision it was last submitted as
 */
public record DraftSummary(
        String id,
        String kind,
        String name,
        DraftState state,
        int version,
        PersonRef author,
        Instant createdAt,
        Instant changedAt,
        @Nullable RevisionRef base,
        @Nullable RevisionRef origin,
        @Nullable RevisionRef submitted) {}
