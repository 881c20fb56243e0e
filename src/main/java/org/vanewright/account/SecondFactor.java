package org.vanewright.account;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.springframework.stereotype.Service;
import org.vanewright.account.SecondFactorRepository.Stored;
import org.vanewright.account.SigningIn.Outcome;
import org.vanewright.audit.AuditLog;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.record.Actor;
import org.vanewright.record.Actors;
import org.vanewright.record.Power;
import org.vanewright.record.RecordNotFoundException;

/** Switches a person's second factor on and off. */
@Service
public class SecondFactor {
    /** As many as HMAC-SHA-1 gives out (RFC 4226, section 4, R6). */
    private static final int SECRET_BYTES = 20;

    private static final String ISSUER = "Vanewright";
    private static final String CODE = "code";
    private static final String HIDDEN = "not shown";
    private static final String LATER = "tried again later, after too many attempts";

    private final SecondFactorRepository factors;
    private final SecondFactorCheck check;
    private final StoredSecrets secrets;
    private final PersonRepository people;
    private final PasswordCheck passwords;
    private final AttemptLimits limits;
    private final Actors actors;
    private final AuditLog audit;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();
    private final RecoveryCodes codes = new RecoveryCodes();

    SecondFactor(
            SecondFactorRepository factors,
            SecondFactorCheck check,
            StoredSecrets secrets,
            PersonRepository people,
            PasswordCheck passwords,
            AttemptLimits limits,
            Actors actors,
            AuditLog audit,
            Clock clock) {
        this.factors = factors;
        this.check = check;
        this.secrets = secrets;
        this.people = people;
        this.passwords = passwords;
        this.limits = limits;
        this.actors = actors;
        this.audit = audit;
        this.clock = clock;
    }

    /**
     * A secret that waits for its first code.
     *
     * @param text in Base 32
     * @param address that apps for codes read from a picture; common practice, no standard
     */
    public record Prepared(String text, String address) {}

    /** Whether the asking person's factor is on. */
    public boolean on() {
        return check.needed(me(Power.READ_OWN));
    }

    /** Recovery codes that the asking person has left. */
    public int recoveryCodesLeft() {
        return factors.recoveryCodes(me(Power.READ_OWN).id());
    }

    /** The asking person's secret while it is not in use yet. */
    public Optional<Prepared> prepared() {
        Person me = me(Power.READ_OWN);
        return factors.find(me.id()).filter(f -> !f.on()).map(f -> prepared(me, f));
    }

    /** Makes a secret for the asking person; it is not in use yet. */
    public void prepare() {
        Person me = me(Power.SUBMIT);
        byte[] secret = new byte[SECRET_BYTES];
        random.nextBytes(secret);
        factors.prepare(me.id(), secrets.write(secret, me.id()));
    }

    /**
     * Takes the secret into use.
     *
     * @return the recovery codes, which nobody can find out later
     */
    public List<String> switchOn(String password, String code, String address) {
        Person me = me(Power.SUBMIT);
        passwords.require(me, password, "password", address);
        Stored factor = factors.find(me.id()).filter(f -> !f.on()).orElseThrow(() -> refusal("begun again"));
        String counted = SecondFactorCheck.counted(me.id());
        if (!limits.begin(counted, address).isZero()) {
            throw refusal(LATER);
        }
        OptionalLong step = SecondFactorCheck.TOTP.matching(
                secrets.read(factor.secret(), me.id()), code.replaceAll("\\s", ""), clock.instant());
        List<String> fresh = codes.next();
        boolean on = step.isPresent()
                && factors.switchOn(
                        me.id(),
                        factor.secret(),
                        step.getAsLong(),
                        clock.instant().truncatedTo(ChronoUnit.MICROS),
                        fresh.stream().map(RecoveryCodes::hash).toList());
        if (!on) {
            throw refusal("the six digits that your app shows now for this picture");
        }
        limits.succeeded(counted, address);
        audit.add(me.id(), me.name(), "second-factor.on", me.email(), "");
        return fresh;
    }

    /** Does without codes from now on. */
    public void switchOff(String password, String code, String address) {
        Person me = me(Power.SUBMIT);
        passwords.require(me, password, "password", address);
        Outcome outcome = check.attempt(me, code, address);
        if (!(outcome instanceof Outcome.Accepted)) {
            throw refusal(
                    outcome instanceof Outcome.Limited
                            ? LATER
                            : "the six digits that your app shows now, not used before, or a recovery code");
        }
        factors.remove(me.id());
        audit.add(me.id(), me.name(), "second-factor.off", me.email(), "");
    }

    /** Takes the factor from somebody who lost the app and the recovery codes; stewards only. */
    public void reset(String personId) {
        Actor steward = actors.current();
        String id = steward.require(Power.RUN);
        Person person = people.find(personId).orElseThrow(() -> new RecordNotFoundException("person", personId, null));
        boolean was = factors.remove(personId);
        audit.add(id, steward.name(), "second-factor.reset", person.email(), was ? "" : "was off");
    }

    private Prepared prepared(Person me, Stored factor) {
        String text = Base32.encode(secrets.read(factor.secret(), me.id()));
        String label = URLEncoder.encode(ISSUER + ":" + me.email(), StandardCharsets.UTF_8);
        String address = "otpauth://totp/" + label + "?secret=" + text + "&issuer=" + ISSUER
                + "&algorithm=SHA1&digits=6&period=" + Totp.STEP.toSeconds();
        return new Prepared(text, address);
    }

    private Person me(Power power) {
        return people.find(actors.current().require(power)).orElseThrow();
    }

    private static InvalidInputException refusal(String allowed) {
        Checks checks = new Checks();
        checks.require(false, CODE, HIDDEN, allowed);
        return new InvalidInputException(checks.problems());
    }
}
