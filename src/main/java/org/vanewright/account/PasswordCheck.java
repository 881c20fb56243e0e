package org.vanewright.account;

import java.time.Duration;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.input.Checks;

/** Asks for the password again before what a borrowed session must not do. */
@Component
class PasswordCheck {
    private final PersonRepository people;
    private final Passwords passwords;
    private final AttemptLimits limits;

    PasswordCheck(PersonRepository people, Passwords passwords, AttemptLimits limits) {
        this.people = people;
        this.passwords = passwords;
        this.limits = limits;
    }

    /**
     * Lets pass who gives the right one, or has none.
     *
     * @param address of the network, for the limits on guessing
     * @throws org.vanewright.engineering.input.InvalidInputException for a wrong one, or after too many
     */
    void require(Person me, String typed, String field, String address) {
        Duration delay = limits.begin(me.email(), address);
        Optional<String> hash = people.passwordHash(me.id());
        boolean right = delay.isZero() && (hash.isEmpty() || passwords.matches(typed, hash.get()));
        if (right) {
            limits.succeeded(me.email(), address);
        }
        Checks checks = new Checks();
        String allowed = delay.isZero() ? "your password" : "tried again later, after too many attempts";
        checks.require(right, field, "not shown", allowed);
        checks.throwIfAny();
    }
}
