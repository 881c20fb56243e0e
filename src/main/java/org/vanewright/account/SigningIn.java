package org.vanewright.account;

import java.time.Clock;
import java.time.Duration;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.vanewright.audit.AuditLog;

/** Decides who may sign in. What it answers and how long it takes tell nobody whether there is such an account. */
@Service
public class SigningIn {
    /** More bytes than a password may have are not worth hashing. */
    private static final int LONGEST = 1000;

    private final PersonRepository people;
    private final Passwords passwords;
    private final AttemptLimits limits;
    private final AuditLog audit;
    private final Clock clock;

    SigningIn(PersonRepository people, Passwords passwords, AttemptLimits limits, AuditLog audit, Clock clock) {
        this.people = people;
        this.passwords = passwords;
        this.limits = limits;
        this.audit = audit;
        this.clock = clock;
    }

    /** What came of an attempt. */
    public sealed interface Outcome {
        /** The person proved to be who they say. */
        record Accepted(Person person) implements Outcome {}

        /** Right, but a steward has not admitted the person yet. */
        record Waiting() implements Outcome {}

        /** Wrong, for whatever reason. */
        record Refused() implements Outcome {}

        /** Not looked at: too many attempts. */
        record Limited(Duration delay) implements Outcome {}
    }

    /**
     * Looks at an attempt.
     *
     * @param typed the e-mail address as typed
     * @param address of the network
     */
    public Outcome attempt(String typed, String password, String address) {
        Optional<String> email = EmailAddress.of(typed);
        // People type passwords into the wrong field, so nothing but an address is written down.
        String subject = email.orElse("no e-mail address");
        String account = email.orElse(typed);
        Duration wait = limits.begin(account, address);
        if (!wait.isZero()) {
            audit.add(null, "Visitor", "sign-in.limited", subject, "");
            return new Outcome.Limited(wait);
        }
        Optional<Person> person = email.flatMap(people::findByEmail);
        Optional<String> hash = person.flatMap(p -> people.passwordHash(p.id()));
        boolean right = passwords.matches(password.length() > LONGEST ? "" : password, hash.orElse(null));
        if (!right || person.isEmpty() || person.get().state() == PersonState.CLOSED) {
            audit.add(null, "Visitor", "sign-in.refused", subject, "");
            return new Outcome.Refused();
        }
        limits.succeeded(account, address);
        if (!person.get().active()) {
            audit.add(null, "Visitor", "sign-in.waiting", subject, "");
            return new Outcome.Waiting();
        }
        hash.filter(passwords::outdated)
                .ifPresent(old -> people.rehash(person.get().id(), old, passwords.hash(password)));
        return new Outcome.Accepted(person.get());
    }

    /** Notes that somebody has been signed in. */
    void noted(Person person, String how) {
        people.signedIn(person.id(), clock.instant().truncatedTo(ChronoUnit.MICROS));
        audit.add(person.id(), person.name(), "sign-in.accepted", person.email(), how);
    }
}
