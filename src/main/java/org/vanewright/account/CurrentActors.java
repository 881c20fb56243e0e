package org.vanewright.account;

import java.time.Clock;
import java.util.EnumSet;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;
import org.springframework.web.context.request.RequestAttributes;
import org.springframework.web.context.request.RequestContextHolder;
import org.vanewright.record.Actor;
import org.vanewright.record.Actors;

/**
 * Reads who is asking from the database once for each request, so that a changed role or a closed account works at once.
 */
@Component
class CurrentActors implements Actors {
    private static final String ATTRIBUTE = CurrentActors.class.getName();

    private final PersonRepository people;
    private final SessionSettings settings;
    private final Clock clock;

    CurrentActors(PersonRepository people, SessionSettings settings, Clock clock) {
        this.people = people;
        this.settings = settings;
        this.clock = clock;
    }

    private record Known(PersonAuthentication authentication, Actor actor) {}

    @Override
    public Actor current() {
        Authentication authentication = SecurityContextHolder.getContext().getAuthentication();
        if (!(authentication instanceof PersonAuthentication person)) {
            return Actor.visitor();
        }
        RequestAttributes request = RequestContextHolder.getRequestAttributes();
        if (request == null) {
            return read(person);
        }
        if (known(request) instanceof Known known && known.authentication() == person) {
            return known.actor();
        }
        Actor actor = read(person);
        request.setAttribute(ATTRIBUTE, new Known(person, actor), RequestAttributes.SCOPE_REQUEST);
        return actor;
    }

    private static @Nullable Object known(RequestAttributes request) {
        return request.getAttribute(ATTRIBUTE, RequestAttributes.SCOPE_REQUEST);
    }

    /** Forgets what is known of this request, for who changes it. */
    static void forget() {
        RequestAttributes request = RequestContextHolder.getRequestAttributes();
        if (request != null) {
            request.removeAttribute(ATTRIBUTE, RequestAttributes.SCOPE_REQUEST);
        }
    }

    private Actor read(PersonAuthentication authentication) {
        if (authentication.since().plus(settings.longest()).isBefore(clock.instant())) {
            return Actor.visitor();
        }
        return people.find(authentication.personId())
                .filter(Person::active)
                .map(person -> new Actor(
                        person.id(),
                        person.name(),
                        authentication.within(EnumSet.copyOf(person.role().powers()))))
                .orElse(Actor.visitor());
    }
}
