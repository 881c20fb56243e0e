package org.vanewright.account;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.vanewright.audit.AuditLog;
import org.vanewright.engineering.input.Checks;
import org.vanewright.record.Actors;
import org.vanewright.record.Power;
import org.vanewright.record.RecordNotFoundException;

/** Tokens with which people let programs sign in for them. */
@Service
public class AccessTokens implements TokenSignIn {
    /** For how many days a token may work. */
    public static final List<Integer> DAYS = List.of(30, 90, 365);

    /** Begins every token, so that people and scanners recognise one that got where it should not be. */
    static final String PREFIX = "vanewright_";

    static final int MOST = 20;
    private static final int LENGTH = PREFIX.length() + 43;
    private static final int LONGEST_NAME = 60;
    private static final Duration USE_NOTED_EVERY = Duration.ofMinutes(1);

    private final AccessTokenRepository tokens;
    private final PersonRepository people;
    private final Actors actors;
    private final AuditLog audit;
    private final Clock clock;
    private final Secrets secrets = new Secrets();

    AccessTokens(AccessTokenRepository tokens, PersonRepository people, Actors actors, AuditLog audit, Clock clock) {
        this.tokens = tokens;
        this.people = people;
        this.actors = actors;
        this.audit = audit;
        this.clock = clock;
    }

    /**
     * A new token.
     *
     * @param secret to be sent by programs; nobody can find it out later
     */
    public record Created(AccessToken token, String secret) {}

    /** The asking person's tokens, newest first. */
    public List<AccessToken> mine() {
        return tokens.all(actors.current().require(Power.READ_OWN));
    }

    /** What the asking person's tokens may be used for. */
    public Set<TokenScope> scopes() {
        return TokenScope.of(me(Power.READ_OWN).role());
    }

    /** Makes a token of the asking person. */
    @Transactional
    public Created create(@Nullable String name, Set<TokenScope> scopes, @Nullable Integer days) {
        Person me = me(Power.SUBMIT);
        List<AccessToken> others = tokens.lockAll(me.id());
        check(me, others, name, scopes, days);
        String called = String.valueOf(name).strip();
        String secret = PREFIX + secrets.next();
        Instant now = now();
        AccessToken token = new AccessToken(
                UUID.randomUUID().toString(),
                me.id(),
                called,
                scopes,
                now,
                now.plus(Duration.ofDays(days == null ? 0 : days)),
                null);
        tokens.add(token, Secrets.hash(secret));
        audit.add(me.id(), me.name(), "token.created", called, token.uses() + " until " + token.expiresAt());
        return new Created(token, secret);
    }

    /** Makes a token of the asking person useless. */
    @Transactional
    public void revoke(String id) {
        Person me = me(Power.SUBMIT);
        AccessToken token = tokens.all(me.id()).stream()
                .filter(t -> t.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new RecordNotFoundException("token", id, null));
        if (tokens.remove(me.id(), id)) {
            audit.add(me.id(), me.name(), "token.revoked", token.name(), token.uses());
        }
    }

    @Override
    public Optional<Holder> find(String token) {
        if (token.length() != LENGTH || !token.startsWith(PREFIX)) {
            return Optional.empty();
        }
        Instant now = now();
        Optional<AccessToken> found = tokens.findUsable(Secrets.hash(token), now);
        found.filter(t -> t.lastUsedAt() == null
                        || !t.lastUsedAt().plus(USE_NOTED_EVERY).isAfter(now))
                .ifPresent(t -> tokens.used(t.id(), now, now.minus(USE_NOTED_EVERY)));
        return found.map(t -> new Holder(t.personId(), TokenScope.powers(t.scopes())));
    }

    private static void check(
            Person me,
            List<AccessToken> others,
            @Nullable String name,
            Set<TokenScope> scopes,
            @Nullable Integer days) {
        Checks checks = new Checks();
        boolean named = checks.text("name", name, LONGEST_NAME);
        if (named
                && checks.require(
                        others.size() < MOST,
                        "name",
                        name,
                        "for one of at most " + MOST + " tokens; revoke one first")) {
            boolean free = others.stream()
                    .noneMatch(t -> t.name().equals(String.valueOf(name).strip()));
            checks.require(free, "name", name, "a name that none of your other tokens has");
        }
        boolean allowed = !scopes.isEmpty() && TokenScope.of(me.role()).containsAll(scopes);
        checks.require(allowed, "scopes", scopes, "at least one of those that your role has");
        checks.require(days != null && DAYS.contains(days), "days", days, "30, 90 or 365 days");
        checks.throwIfAny();
    }

    private Person me(Power power) {
        return people.find(actors.current().require(power)).orElseThrow();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
