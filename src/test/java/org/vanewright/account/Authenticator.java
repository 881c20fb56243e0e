package org.vanewright.account;

import java.time.Instant;
import org.springframework.context.ApplicationContext;

/** An app for one-time codes as a person has it on a phone. */
final class Authenticator {
    private final byte[] secret;
    private final long begun = Totp.step(Instant.now());

    /** Has read the secret that the page of that person shows. */
    Authenticator(ApplicationContext service, String personId) {
        String stored = service.getBean(SecondFactorRepository.class)
                .find(personId)
                .orElseThrow()
                .secret();
        secret = service.getBean(StoredSecrets.class).read(stored, personId);
    }

    /** As the page writes it. */
    String text() {
        return Base32.encode(secret);
    }

    /** Of the step in which the secret was read. */
    String code() {
        return SecondFactorCheck.TOTP.code(secret, begun);
    }

    /** Of the next one, which the service's tolerance takes at once. */
    String nextCode() {
        return SecondFactorCheck.TOTP.code(secret, begun + 1);
    }
}
