package org.vanewright.account;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.vanewright.account.ProviderIdentity.Linked;
import org.vanewright.audit.AuditLog;
import org.vanewright.record.Actors;
import org.vanewright.record.NotAllowedException;
import org.vanewright.record.Power;
import org.vanewright.record.RecordNotFoundException;

/**
 * Who may sign in by an account at a provider: whose account here is linked with it, by issuer and subject. Never by
 * e-mail address: a provider may let its people write any address, or give a lapsed one to somebody else, who would walk
 * into the account of its owner here. Nothing is guessed at here, so attempts are logged and not counted.
 */
@Service
public class ProviderSignIn {
    private static final int LONGEST_REASON = 60;

    private final PersonRepository people;
    private final ProviderIdentityRepository identities;
    private final PasswordCheck passwords;
    private final Actors actors;
    private final AuditLog audit;
    private final Clock clock;

    ProviderSignIn(
            PersonRepository people,
            ProviderIdentityRepository identities,
            PasswordCheck passwords,
            Actors actors,
            AuditLog audit,
            Clock clock) {
        this.people = people;
        this.identities = identities;
        this.passwords = passwords;
        this.actors = actors;
        this.audit = audit;
        this.clock = clock;
    }

    /** Whose it is, with the account open, waiting or closed; nobody for one that is not linked. */
    @Transactional
    public Optional<Person> owner(ProviderIdentity identity) {
        Optional<Linked> linked = identities.find(identity.issuer(), identity.subject());
        linked.ifPresent(l -> identities.used(l.id(), now()));
        return linked.flatMap(l -> people.find(l.personId()));
    }

    /** Notes that somebody came from a provider and was not let in. */
    void refused(String provider, @Nullable Person person, String reason) {
        String shown = reason.length() <= LONGEST_REASON ? reason : reason.substring(0, LONGEST_REASON);
        String subject = person == null ? "by " + provider : person.email();
        audit.add(null, "Visitor", "sign-in.refused", subject, provider + ": " + shown);
    }

    /** What the asking person has linked. */
    public List<Linked> mine() {
        return identities.of(actors.current().require(Power.READ_OWN));
    }

    /** Whether the asking person could sign in without any provider. */
    public boolean passwordSet() {
        return people.passwordHash(actors.current().require(Power.READ_OWN)).isPresent();
    }

    /**
     * Asks for the password before the asking person goes to a provider to link an account there, since whoever is
     * linked can sign in from then on.
     *
     * @param address of the network
     * @return the person's id
     */
    public String beforeLinking(String password, String address) {
        Person me = me();
        passwords.require(me, password, "password", address);
        return me.id();
    }

    /** False where it is linked with another account here, or this one with another at that provider. */
    boolean link(Person person, ProviderIdentity identity) {
        boolean added = identities.add(person.id(), identity, now());
        audit.add(
                person.id(),
                person.name(),
                added ? "provider.linked" : "provider.link-refused",
                person.email(),
                identity.provider());
        return added;
    }

    /** Signing in by that one is over; only for who has a password to sign in with. */
    @Transactional
    public void unlink(String id) {
        Person me = me();
        Linked linked = identities.of(me.id()).stream()
                .filter(l -> l.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new RecordNotFoundException("link", id, null));
        if (!identities.remove(me.id(), id)) {
            throw new NotAllowedException("Set a password first. Without one you could not sign in any more.");
        }
        audit.add(
                me.id(),
                me.name(),
                "provider.unlinked",
                me.email(),
                linked.identity().provider());
    }

    private Person me() {
        return people.find(actors.current().require(Power.SUBMIT)).orElseThrow();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
