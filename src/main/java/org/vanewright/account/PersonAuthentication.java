package org.vanewright.account;

import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.security.authentication.AbstractAuthenticationToken;
import org.vanewright.record.Power;

/**
 * That a request comes from a person. It says nothing about what the person may do: that is read for each request anew.
 */
public final class PersonAuthentication extends AbstractAuthenticationToken {
    private static final long serialVersionUID = 1L;

    private final String personId;
    private final Instant since;
    private final @Nullable EnumSet<Power> scope;

    private PersonAuthentication(String personId, Instant since, @Nullable EnumSet<Power> scope) {
        super(List.of());
        this.personId = personId;
        this.since = since;
        this.scope = scope;
        setAuthenticated(true);
    }

    /** Signed in by hand at that time. */
    static PersonAuthentication bySignIn(String personId, Instant since) {
        return new PersonAuthentication(personId, since, null);
    }

    /** By a token, which carries no more than the powers of its scope. */
    static PersonAuthentication byToken(String personId, Instant now, Set<Power> scope) {
        EnumSet<Power> powers = EnumSet.noneOf(Power.class);
        powers.addAll(scope);
        return new PersonAuthentication(personId, now, powers);
    }

    String personId() {
        return personId;
    }

    Instant since() {
        return since;
    }

    /** Those of the powers that this way of signing in carries. */
    Set<Power> within(Set<Power> powers) {
        if (scope == null) {
            return powers;
        }
        EnumSet<Power> both = EnumSet.copyOf(scope);
        both.retainAll(powers);
        return both;
    }

    @Override
    public String getPrincipal() {
        return personId;
    }

    @Override
    public @Nullable Object getCredentials() {
        return null;
    }
}
