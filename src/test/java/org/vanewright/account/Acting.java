package org.vanewright.account;

import java.time.Instant;
import java.util.function.Supplier;
import org.springframework.security.core.context.SecurityContextHolder;

/** Calls services as a person would who has signed in. */
final class Acting {
    private Acting() {}

    static <T> T as(String personId, Supplier<T> work) {
        return with(PersonAuthentication.bySignIn(personId, Instant.now()), work);
    }

    static <T> T with(PersonAuthentication authentication, Supplier<T> work) {
        SecurityContextHolder.getContext().setAuthentication(authentication);
        try {
            return work.get();
        } finally {
            SecurityContextHolder.clearContext();
        }
    }
}
