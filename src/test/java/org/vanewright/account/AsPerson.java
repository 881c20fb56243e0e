package org.vanewright.account;

import java.time.Instant;
import java.util.function.Supplier;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;

/** Calls services as somebody who has signed in, without a request. */
public final class AsPerson {
    private AsPerson() {}

    public static <R> R as(String personId, Supplier<R> work) {
        SecurityContextHolder.setContext(
                new SecurityContextImpl(PersonAuthentication.bySignIn(personId, Instant.now())));
        try {
            return work.get();
        } finally {
            SecurityContextHolder.clearContext();
        }
    }
}
