package org.vanewright.account;

import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.regex.Pattern;
import org.springframework.stereotype.Component;
import org.vanewright.account.SecondFactorRepository.Stored;
import org.vanewright.account.SigningIn.Outcome;
import org.vanewright.audit.AuditLog;

/** Looks at the codes of second factors. Guessing is slowed down as with passwords, by account and by network. */
@Component
public class SecondFactorCheck {
    static final Totp TOTP = new Totp(6);
    private static final Pattern DIGITS = Pattern.compile("\\d{6}");
    private static final int LONGEST = 100;

    private final SecondFactorRepository factors;
    private final StoredSecrets secrets;
    private final AttemptLimits limits;
    private final AuditLog audit;
    private final Clock clock;

    SecondFactorCheck(
            SecondFactorRepository factors, StoredSecrets secrets, AttemptLimits limits, AuditLog audit, Clock clock) {
        this.factors = factors;
        this.secrets = secrets;
        this.limits = limits;
        this.audit = audit;
        this.clock = clock;
    }

    /** Whether that person signs in with a code besides the password. */
    public boolean needed(Person person) {
        return factors.find(person.id()).filter(Stored::on).isPresent();
    }

    /**
     * Looks at a code, which is used up where it is right.
     *
     * @param typed a code of the moment or a recovery code
     * @param address of the network
     */
    public Outcome attempt(Person person, String typed, String address) {
        String counted = counted(person.id());
        Duration wait = limits.begin(counted, address);
        if (!wait.isZero()) {
            audit.add(null, "Visitor", "second-factor.limited", person.email(), "");
            return new Outcome.Limited(wait);
        }
        if (!takes(person, typed)) {
            audit.add(null, "Visitor", "second-factor.refused", person.email(), "");
            return new Outcome.Refused();
        }
        limits.succeeded(counted, address);
        return new Outcome.Accepted(person);
    }

    /** The name under which attempts at a person's codes are counted. */
    static String counted(String personId) {
        return "second-factor " + personId;
    }

    private boolean takes(Person person, String typed) {
        String code = typed.length() > LONGEST ? "" : typed.replaceAll("\\s", "");
        Optional<Stored> factor = factors.find(person.id()).filter(Stored::on);
        if (factor.isEmpty()) {
            return false;
        }
        if (DIGITS.matcher(code).matches()) {
            OptionalLong step = TOTP.matching(secrets.read(factor.get().secret(), person.id()), code, clock.instant());
            return step.isPresent() && factors.useStep(person.id(), step.getAsLong());
        }
        boolean used = factors.useRecoveryCode(person.id(), RecoveryCodes.hash(code));
        if (used) {
            String left = factors.recoveryCodes(person.id()) + " left";
            audit.add(person.id(), person.name(), "second-factor.recovery-code", person.email(), left);
        }
        return used;
    }
}
