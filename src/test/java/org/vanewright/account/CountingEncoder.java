package org.vanewright.account;

import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.springframework.security.crypto.argon2.Argon2PasswordEncoder;
import org.springframework.security.crypto.password.PasswordEncoder;

/** Hashes quickly, and counts how often it was asked to. */
final class CountingEncoder implements PasswordEncoder {
    private final PasswordEncoder encoder = new Argon2PasswordEncoder(16, 32, 1, 64, 1);
    private final AtomicInteger hashes = new AtomicInteger();

    @Override
    public @Nullable String encode(@Nullable CharSequence password) {
        hashes.incrementAndGet();
        return encoder.encode(password);
    }

    @Override
    public boolean matches(@Nullable CharSequence password, @Nullable String hash) {
        hashes.incrementAndGet();
        return encoder.matches(password, hash);
    }

    @Override
    public boolean upgradeEncoding(@Nullable String hash) {
        return encoder.upgradeEncoding(hash);
    }

    /** How many hashes that work computes. */
    int during(Runnable work) {
        int before = hashes.get();
        work.run();
        return hashes.get() - before;
    }
}
