package org.vanewright.record.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.DraftState;
import org.vanewright.record.DraftSummary;
import org.vanewright.record.RevisionRef;

/** One's own draft in a list of the API. */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record DraftItem(
        String id,
        String kind,
        String name,
        DraftState state,
        int version,
        String author,
        Instant createdAt,
        Instant changedAt,
        @Nullable RevisionRef base,
        @Nullable RevisionRef origin,
        @Nullable RevisionRef submitted) {
    static DraftItem of(DraftSummary d) {
        return new DraftItem(
                d.id(),
                d.kind(),
                d.name(),
                d.state(),
                d.version(),
                d.author().name(),
                d.createdAt(),
                d.changedAt(),
                d.base(),
                d.origin(),
                d.submitted());
    }
}
