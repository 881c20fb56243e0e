package org.vanewright.account;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A link that works once, without its secret.
 *
 * @param role that it gives; null where it gives none
 * @param personId whom it is for; null where that person has no account yet
 * @param note what its maker wrote about it, such as for whom it is
 * @param createdBy name of its maker
 */
public record OneTimeLink(
        String id,
        Purpose purpose,
        @Nullable Role role,
        @Nullable String personId,
        String note,
        String createdBy,
        Instant createdAt,
        Instant expiresAt) {
    /** What such links are for. */
    public enum Purpose {
        /** To make the first steward. */
        SET_UP,
        /** To join. */
        INVITATION,
        /** To choose a new password. */
        RESET
    }
}
