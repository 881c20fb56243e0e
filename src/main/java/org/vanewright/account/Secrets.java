package org.vanewright.account;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Base64;
import org.vanewright.platform.Downloads;

/** Secrets for links: 256 bits, of which only a hash is stored. */
final class Secrets {
    private static final int BYTES = 32;

    private final SecureRandom random = new SecureRandom();

    /** A new one, of characters that may stand in an address. */
    String next() {
        byte[] bytes = new byte[BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** SHA-256 in hexadecimal; a slow hash is needed only for what people choose themselves. */
    static String hash(String secret) {
        return Downloads.sha256(secret.getBytes(StandardCharsets.UTF_8));
    }
}
