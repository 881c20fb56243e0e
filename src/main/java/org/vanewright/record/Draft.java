package org.vanewright.record;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Work that is not published yet. It belongs to its author and co-authors and is found by an identity that cannot be
 * guessed.
 *
 * @param id random
 * @param kind such as {@code "airframe"}
 * @param state where it stands
 * @param version counts savings from 1; whoever saves names the version they started from
 * @param content as last saved; may be incomplete
 * @param author who started it
 * @param coauthors who may change it, too
 * @param createdAt when it was started
 * @param changedAt when it was last saved
 * @param base the public revision that it changes; null for a new record
 * @param origin the revision of another record that it was started from
 * @param submitted the revision it was last submitted as
 */
public record Draft<T extends RecordContent>(
        String id,
        String kind,
        DraftState state,
        int version,
        T content,
        PersonRef author,
        List<PersonRef> coauthors,
        Instant createdAt,
        Instant changedAt,
        @Nullable RevisionRef base,
        @Nullable RevisionRef origin,
        @Nullable RevisionRef submitted) {
    public Draft {
        coauthors = List.copyOf(coauthors);
    }

    public boolean isAuthor(String personId) {
        return author.id().equals(personId);
    }

    /** Author or co-author. */
    public boolean belongsTo(String personId) {
        return isAuthor(personId) || coauthors.stream().anyMatch(c -> c.id().equals(personId));
    }

    /** What its revisions are derived from. */
    public @Nullable RevisionRef derivedFrom() {
        return base == null ? origin : base;
    }
}
