package org.vanewright.record.web;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordState;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** A revision in the API. */
public record RevisionBody<T extends RecordContent>(
        String slug,
        int revision,
        RecordState state,
        String sha256,
        String contributor,
        Instant createdAt,
        @Nullable RevisionRef derivedFrom,
        T content) {
    public static <T extends RecordContent> RevisionBody<T> of(Revision<T> r) {
        return new RevisionBody<>(
                r.slug(),
                r.number(),
                r.state(),
                r.sha256(),
                r.contributor(),
                r.createdAt(),
                r.derivedFrom(),
                r.content());
    }
}
