package org.vanewright.account;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.Cipher;
import javax.crypto.SecretKey;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * Writes secrets that must be read again: by AES-256-GCM (M. Dworkin, 2007, NIST SP 800-38D) where {@code
 * vanewright.secret-key} is set, else plainly. One stored before there was a key can still be read afterwards.
 */
@Component
class StoredSecrets {
    private static final String PLAIN = "plain:";
    private static final String SEALED = "aes-gcm:";
    private static final int KEY_BYTES = 32;
    private static final int NONCE_BYTES = 12;
    private static final int TAG_BITS = 128;

    private final Optional<SecretKey> key;
    private final SecureRandom random = new SecureRandom();

    StoredSecrets(@Value("${vanewright.secret-key:}") String setting) {
        key = setting.isBlank() ? Optional.empty() : Optional.of(key(setting.strip()));
    }

    private static SecretKey key(String setting) {
        byte[] bytes;
        try {
            bytes = Base64.getDecoder().decode(setting);
        } catch (IllegalArgumentException e) {
            bytes = new byte[0];
        }
        if (bytes.length != KEY_BYTES) {
            throw new IllegalStateException("vanewright.secret-key must be 32 random bytes in Base64, such as"
                    + " `openssl rand -base64 32` prints");
        }
        return new SecretKeySpec(bytes, "AES");
    }

    /** @param owner whose secret it is; read for anybody else, it is refused */
    String write(byte[] secret, String owner) {
        if (key.isEmpty()) {
            return PLAIN + HexFormat.of().formatHex(secret);
        }
        byte[] nonce = new byte[NONCE_BYTES];
        random.nextBytes(nonce);
        byte[] sealed = transform(Cipher.ENCRYPT_MODE, key.get(), nonce, secret, owner);
        byte[] whole = ByteBuffer.allocate(NONCE_BYTES + sealed.length)
                .put(nonce)
                .put(sealed)
                .array();
        return SEALED + Base64.getEncoder().encodeToString(whole);
    }

    byte[] read(String stored, String owner) {
        if (stored.startsWith(PLAIN)) {
            return HexFormat.of().parseHex(stored.substring(PLAIN.length()));
        }
        SecretKey known = key.orElseThrow(
                () -> new IllegalStateException("a stored secret needs vanewright.secret-key to be read"));
        ByteBuffer whole = ByteBuffer.wrap(Base64.getDecoder().decode(stored.substring(SEALED.length())));
        byte[] nonce = new byte[NONCE_BYTES];
        whole.get(nonce);
        byte[] sealed = new byte[whole.remaining()];
        whole.get(sealed);
        return transform(Cipher.DECRYPT_MODE, known, nonce, sealed, owner);
    }

    private static byte[] transform(int mode, SecretKey key, byte[] nonce, byte[] input, String owner) {
        try {
            Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
            cipher.init(mode, key, new GCMParameterSpec(TAG_BITS, nonce));
            cipher.updateAAD(owner.getBytes(StandardCharsets.UTF_8));
            return cipher.doFinal(input);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("a stored secret cannot be read with this vanewright.secret-key", e);
        }
    }
}
