package org.vanewright.record;

import java.time.Instant;

/**
 * A revision without what it says, as the list of a record's revisions shows it: documents are long, and such a list reads
 * none of them.
 *
 * @param slug identity
 * @param number counts from 1
 * @param state where it stands
 * @param sha256 of its canonical JSON
 * @param contributor display name, at that time, of who submitted it
 * @param createdAt when it was submitted
 * @param standing who answers for it and what became of it
 */
public record ListedRevision(
        String slug,
        int number,
        RecordState state,
        String sha256,
        String contributor,
        Instant createdAt,
        Standing standing) {
    /** The first twelve digits, as printed on templates. */
    public String shortHash() {
        return sha256.substring(0, 12);
    }

    /** When it became public, here or at its origin, or was submitted where it is not. */
    public Instant shownAt() {
        return standing.shownAt(createdAt);
    }
}
