package org.vanewright.account;

import java.util.Optional;
import java.util.Set;
import org.vanewright.record.Power;

/** Knows the tokens with which programs sign in. */
public interface TokenSignIn {
    /** Whose token that is, and what it may be used for; empty for an unknown, revoked or expired one. */
    Optional<Holder> find(String token);

    /**
     * The person behind a token.
     *
     * @param scope the most that the token may be used for; never more than its owner may
     */
    record Holder(String personId, Set<Power> scope) {}
}
