package org.vanewright.account;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Somebody's account at an OpenID provider.
 *
 * @param issuer of the provider
 * @param subject which account there; never given to another
 * @param provider what the provider was called here at that time
 */
public record ProviderIdentity(String issuer, String subject, String provider) {
    /**
     * One that is linked to somebody's account here.
     *
     * @param lastUsedAt null while nobody has signed in by it
     */
    public record Linked(
            String id,
            String personId,
            ProviderIdentity identity,
            Instant linkedAt,
            @Nullable Instant lastUsedAt) {}

    /**
     * What the provider says of somebody who has no account here yet.
     *
     * @param email as the provider has it: a suggestion for a form, proof of nothing
     * @param name likewise
     */
    public record Newcomer(ProviderIdentity identity, String email, String name) {}
}
