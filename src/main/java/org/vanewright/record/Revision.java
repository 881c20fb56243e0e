package org.vanewright.record;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One immutable revision of a record.
 *
 * @param slug identity
 * @param number counts from 1; numbers that were returned in review are never public
 * @param state where it stands
 * @param content what it says
 * @param sha256 of its canonical JSON (RFC 8785), 64 lower-case hexadecimal digits
 * @param contributor display name, at that time, of who submitted it
 * @param createdAt when it was submitted
 * @param derivedFrom the revision it was started from, of this record or another
 * @param standing who answers for it and what became of it
 */
public record Revision<T extends RecordContent>(
        String slug,
        int number,
        RecordState state,
        T content,
        String sha256,
        String contributor,
        Instant createdAt,
        @Nullable RevisionRef derivedFrom,
        Standing standing) {
    /** What is printed on files of a revision that nobody has published. */
    public static final String NOT_PUBLISHED = "not published";

    public RevisionRef ref() {
        return new RevisionRef(slug, number);
    }

    /** The first twelve digits, as printed on templates. */
    public String shortHash() {
        return sha256.substring(0, 12);
    }

    public boolean isPublic() {
        return state.isPublic();
    }

    /** Whether it has been published, here or, before it was imported, at its origin. */
    public boolean isReleased() {
        return isPublic() || state == RecordState.IMPORTED;
    }

    /**
     * Names what the document says here: its hash, but where an imported one names records under other slugs than at its
     * origin. Two with the same key are the same in everything that is made from them; two with the same hash may not be.
     */
    public String contentKey() {
        ImportOrigin origin = standing.origin();
        return origin == null || origin.localSha256() == null ? sha256 : origin.localSha256();
    }

    /** For names on what is printed; a printed piece outlives the page that says where its revision stands. */
    public String printedName() {
        return content.name() + (isReleased() ? "" : " (" + NOT_PUBLISHED + ")");
    }

    /** When it became public, here or at its origin, or was submitted where it is not. */
    public Instant shownAt() {
        return standing.shownAt(createdAt);
    }

    /** The published revision of the same record that this one changes; null for the first or for another's child. */
    public @Nullable RevisionRef base() {
        return derivedFrom != null && derivedFrom.slug().equals(slug) ? derivedFrom : null;
    }
}
