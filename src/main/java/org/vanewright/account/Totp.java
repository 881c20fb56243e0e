package org.vanewright.account;

import com.eatthepath.otp.TimeBasedOneTimePasswordGenerator;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.OptionalLong;
import javax.crypto.spec.SecretKeySpec;

/**
 * One-time codes by the time of day (D. M'Raihi et al., 2011, RFC 6238): HMAC-SHA-1, steps of 30 s. A clock may be off
 * by one step.
 */
final class Totp {
    static final Duration STEP = Duration.ofSeconds(30);
    private static final int TOLERATED_STEPS = 1;

    private final int digits;

    Totp(int digits) {
        this.digits = digits;
    }

    static long step(Instant at) {
        return Math.floorDiv(at.getEpochSecond(), STEP.toSeconds());
    }

    String code(byte[] secret, long step) {
        try {
            var codes = new TimeBasedOneTimePasswordGenerator(
                    STEP, digits, TimeBasedOneTimePasswordGenerator.TOTP_ALGORITHM_HMAC_SHA1);
            return codes.generateOneTimePasswordString(
                    new SecretKeySpec(secret, codes.getAlgorithm()),
                    Instant.ofEpochSecond(step * STEP.toSeconds()),
                    Locale.ROOT);
        } catch (InvalidKeyException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The step whose code that is; empty for a wrong one. It takes the same time whichever step it is. */
    OptionalLong matching(byte[] secret, String typed, Instant now) {
        OptionalLong found = OptionalLong.empty();
        byte[] given = typed.getBytes(StandardCharsets.UTF_8);
        long middle = step(now);
        for (long step = middle - TOLERATED_STEPS; step <= middle + TOLERATED_STEPS; step++) {
            if (MessageDigest.isEqual(code(secret, step).getBytes(StandardCharsets.UTF_8), given)) {
                found = OptionalLong.of(step);
            }
        }
        return found;
    }
}
