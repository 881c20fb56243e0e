package org.vanewright.account;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Somebody with an account.
 *
 * @param id a UUID; never changes
 * @param email in lower case; one account each
 * @param name as the person chose to be called
 * @param about what the person says about themselves
 * @param version counts changes
 * @param signedInAt when the person last signed in
 */
public record Person(
        String id,
        String email,
        String name,
        Role role,
        PersonState state,
        @Nullable String about,
        int version,
        Instant createdAt,
        @Nullable Instant signedInAt) {
    public boolean active() {
        return state == PersonState.ACTIVE;
    }
}
