package org.vanewright.account;

import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.http.HttpStatus;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import org.springframework.web.ErrorResponseException;

/** Hashes and compares passwords, a bounded number at a time. */
@Component
@EnableConfigurationProperties(PasswordSettings.class)
class Passwords {
    private static final int SALT_BYTES = 16;
    private static final int HASH_BYTES = 32;
    private static final int LANES = 1;
    private static final long PATIENCE_SECONDS = 10;

    private final PasswordEncoder encoder;
    private final Semaphore free;
    private @Nullable String nobodys;

    @Autowired
    Passwords(PasswordSettings settings) {
        this(
                settings,
                new Argon2PasswordEncoder(SALT_BYTES, HASH_BYTES, LANES, settings.memoryKib(), settings.passes()));
    }

    Passwords(PasswordSettings settings, PasswordEncoder encoder) {
        this.encoder = encoder;
        free = new Semaphore(settings.atOnce(), true);
    }

    String hash(String password) {
        return bounded(() -> String.valueOf(encoder.encode(password)));
    }

    /** Takes the same work where there is no hash to compare with. */
    boolean matches(String password, @Nullable String hash) {
        String other = nobodys();
        boolean same = bounded(() -> encoder.matches(password, hash == null ? other : hash));
        return same && hash != null;
    }

    /** Made by the first who signs in, whether there is a hash or not. */
    private synchronized String nobodys() {
        if (nobodys == null) {
            nobodys = hash(new Secrets().next());
        }
        return nobodys;
    }

    /** Whether a hash was made with other settings than today's. */
    boolean outdated(String hash) {
        return encoder.upgradeEncoding(hash);
    }

    private <T> T bounded(Supplier<T> work) {
        try {
            if (!free.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
                throw new TooBusyException();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new TooBusyException();
        }
        try {
            return work.get();
        } finally {
            free.release();
        }
    }

    /** More passwords are being checked than this instance has memory for. */
    static class TooBusyException extends ErrorResponseException {
        private static final long serialVersionUID = 1L;

        TooBusyException() {
            super(HttpStatus.TOO_MANY_REQUESTS);
        }
    }
}
