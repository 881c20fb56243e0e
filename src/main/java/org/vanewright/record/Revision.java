package org.vanewright.record;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One immutable revision of a record.
 *
 * @param slug identity
 * @param number counts from 1
 * @param state where it stands
 * @param content what it says
 * @param sha256 of its canonical JSON (RFC 8785), 64 lower-case hexadecimal digits
 * @param contributor display name of who published it
 * @param createdAt when
 * @param derivedFrom the revision it was started from, of this record or another
 */
public record Revision<T extends RecordContent>(
        String slug,
        int number,
        RecordState state,
        T content,
        String sha256,
        String contributor,
        Instant createdAt,
        @Nullable RevisionRef derivedFrom) {
    public RevisionRef ref() {
        return new RevisionRef(slug, number);
    }

    /** The first twelve digits, as printed on templates. */
    public String shortHash() {
        return sha256.substring(0, 12);
    }
}
