package org.vanewright.account;

import java.time.Instant;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A token without its secret.
 *
 * @param name as its owner called it
 * @param lastUsedAt to the minute; null while it has not been used
 */
public record AccessToken(
        String id,
        String personId,
        String name,
        Set<TokenScope> scopes,
        Instant createdAt,
        Instant expiresAt,
        @Nullable Instant lastUsedAt) {
    public boolean expired(Instant now) {
        return !expiresAt.isAfter(now);
    }

    /** Its scopes in words. */
    public String uses() {
        return scopes.stream().sorted().map(TokenScope::label).collect(Collectors.joining(", "));
    }
}
