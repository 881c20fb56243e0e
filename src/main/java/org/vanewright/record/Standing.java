package org.vanewright.record;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Who answers for a revision and what became of it.
 *
 * @param contributorId person who submitted it; null for what came with the service
 * @param licence under which it may be used; null only for revisions older than licences
 * @param summary what is new in it, in the contributor's words
 * @param draftId the draft it was submitted from; null for what came with the service
 * @param publishedAt null until it is public
 * @param publishedBy display name of who published it
 * @param closedAt when it was returned or withdrawn; null otherwise
 * @param closedBy display name of who returned or withdrew it
 * @param reason why it was returned or withdrawn
 * @param origin where it was imported from; null for what was made here
 */
public record Standing(
        @Nullable String contributorId,
        @Nullable Licence licence,
        @Nullable String summary,
        @Nullable String draftId,
        @Nullable Instant publishedAt,
        @Nullable String publishedBy,
        @Nullable Instant closedAt,
        @Nullable String closedBy,
        @Nullable String reason,
        @Nullable ImportOrigin origin) {
    /** Of what was made here. */
    public Standing(
            @Nullable String contributorId,
            @Nullable Licence licence,
            @Nullable String summary,
            @Nullable String draftId,
            @Nullable Instant publishedAt,
            @Nullable String publishedBy,
            @Nullable Instant closedAt,
            @Nullable String closedBy,
            @Nullable String reason) {
        this(contributorId, licence, summary, draftId, publishedAt, publishedBy, closedAt, closedBy, reason, null);
    }

    /**
     * When it became public, here or at its origin.
     *
     * @param createdAt when it was submitted, which counts where it is not public
     */
    Instant shownAt(Instant createdAt) {
        if (publishedAt != null) {
            return publishedAt;
        }
        return origin == null || origin.publishedAt() == null ? createdAt : origin.publishedAt();
    }

    /** Of what comes with the service and is public at once. */
    static Standing shipped(String contributor, Instant at) {
        return new Standing(null, Licence.CC0_1_0, null, null, at, contributor, null, null, null);
    }

    /** Of what waits for a review. */
    static Standing submitted(String contributorId, Licence licence, @Nullable String summary, String draftId) {
        return new Standing(contributorId, licence, summary, draftId, null, null, null, null, null);
    }

    /** Of what came in a kit and was published elsewhere. */
    static Standing imported(@Nullable Licence licence, ImportOrigin origin) {
        return new Standing(null, licence, null, null, null, null, null, null, null, origin);
    }
}
