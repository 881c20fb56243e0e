package org.vanewright.record.web;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.Licence;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordState;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/**
 * A revision in the API.
 *
 * @param contributor display name of who submitted it
 * @param createdAt when it was submitted
 * @param publishedAt absent until it is public
 * @param licence under which it may be used
 * @param reason why it was returned or withdrawn
 * @param origin where it was imported from; absent for what was made here
 */
public record RevisionBody<T extends RecordContent>(
        String slug,
        int revision,
        RecordState state,
        String sha256,
        String contributor,
        Instant createdAt,
        @Nullable Instant publishedAt,
        @Nullable Licence licence,
        @Nullable String reason,
        @Nullable RevisionRef derivedFrom,
        @Nullable OriginBody origin,
        T content) {
    public static <T extends RecordContent> RevisionBody<T> of(Revision<T> r) {
        return new RevisionBody<>(
                r.slug(),
                r.number(),
                r.state(),
                r.sha256(),
                r.contributor(),
                r.createdAt(),
                r.standing().publishedAt(),
                r.standing().licence(),
                r.standing().reason(),
                r.derivedFrom(),
                OriginBody.of(r.standing().origin()),
                r.content());
    }
}
