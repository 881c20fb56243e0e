package org.vanewright.account;

import java.time.Instant;
import java.util.function.Supplier;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.core.context.SecurityContextImpl;
import org.vanewright.account.NewPeople.NewPerson;

/** Calls a service in the name of somebody, where a test needs what a person would do elsewhere. */
public final class Acting {
    private Acting() {}

    public static <R> R as(NewPerson person, Supplier<R> work) {
        SecurityContextHolder.setContext(
                new SecurityContextImpl(PersonAuthentication.bySignIn(person.id(), Instant.now())));
        try {
            return work.get();
        } finally {
            SecurityContextHolder.clearContext();
        }
    }
}
