package org.vanewright.account;

import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.audit.AuditLog;
import org.vanewright.engineering.input.Checks;
import org.vanewright.record.Actors;
import org.vanewright.record.Power;

/** What people change about their own accounts. */
@Service
public class OwnAccount {
    private final PersonRepository people;
    private final PersonRules rules;
    private final Passwords passwords;
    private final AttemptLimits limits;
    private final Sessions sessions;
    private final Actors actors;
    private final AuditLog audit;

    OwnAccount(
            PersonRepository people,
            PersonRules rules,
            Passwords passwords,
            AttemptLimits limits,
            Sessions sessions,
            Actors actors,
            AuditLog audit) {
        this.people = people;
        this.rules = rules;
        this.passwords = passwords;
        this.limits = limits;
        this.sessions = sessions;
        this.actors = actors;
        this.audit = audit;
    }

    /** The person who asks. */
    public Person mine() {
        return people.find(actors.current().require(Power.READ_OWN)).orElseThrow();
    }

    /** Changes how the person is called and what they say of themselves. */
    public void describe(@Nullable String name, @Nullable String about) {
        Person me = changed();
        Checks checks = new Checks();
        rules.name(checks, name);
        rules.about(checks, about);
        checks.throwIfAny();
        people.describe(me.id(), String.valueOf(name), about);
        CurrentActors.forget();
    }

    /**
     * Changes the password and ends all sessions of the person, since somebody else may have known the old one.
     *
     * @param address of the network, for the limits on guessing
     */
    public void changePassword(String current, String next, String address) {
        Person me = changed();
        Checks checks = new Checks();
        Duration delay = limits.begin(me.email(), address);
        Optional<String> hash = people.passwordHash(me.id());
        boolean right = delay.isZero() && passwords.matches(current, hash.orElse(null));
        if (right) {
            limits.succeeded(me.email(), address);
        }
        String allowed = delay.isZero() ? "your current password" : "tried again later, after too many attempts";
        checks.require(right || hash.isEmpty(), "currentPassword", "not shown", allowed);
        rules.password(checks, "newPassword", next, me.email(), me.name());
        checks.throwIfAny();
        people.changePassword(me.id(), passwords.hash(next));
        audit.add(me.id(), me.name(), "account.password", me.email(), "");
        sessions.endAll(me.id());
    }

    /** Ends every session of the person, this one included. */
    public void signOutEverywhere() {
        Person me = mine();
        audit.add(me.id(), me.name(), "sign-out.everywhere", me.email(), "");
        sessions.endAll(me.id());
    }

    /** Notes that the person signs out here. */
    public void signOut() {
        if (actors.current().signedIn()) {
            Person me = mine();
            audit.add(me.id(), me.name(), "sign-out", me.email(), "");
        }
    }

    private Person changed() {
        return people.find(actors.current().require(Power.SUBMIT)).orElseThrow();
    }
}
