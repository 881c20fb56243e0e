package org.vanewright.account;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.springframework.stereotype.Component;

/** Remembers in a session who gave the right password, or came from a provider, and still owes a code. Nobody is signed in by it. */
@Component
public class HalfSignIns {
    private static final String PERSON = "half-sign-in.person";
    private static final String VERSION = "half-sign-in.version";
    private static final String SINCE = "half-sign-in.since";
    private static final String HOW = "half-sign-in.how";
    private static final Duration PATIENCE = Duration.ofMinutes(10);

    private final PersonRepository people;
    private final Clock clock;

    HalfSignIns(PersonRepository people, Clock clock) {
        this.people = people;
        this.clock = clock;
    }

    /**
     * Remembers somebody; the session's id is new, so that nobody else knows it.
     *
     * @param how the person came so far, such as by password
     */
    public void begin(HttpServletRequest request, Person person, String how) {
        HttpSession session = request.getSession(true);
        request.changeSessionId();
        session.setAttribute(PERSON, person.id());
        session.setAttribute(VERSION, person.version());
        session.setAttribute(SINCE, clock.instant());
        session.setAttribute(HOW, how);
    }

    /** Who owes a code; nobody after ten minutes, or where the account or its password changed meanwhile. */
    public Optional<Person> person(HttpServletRequest request) {
        HttpSession session = request.getSession(false);
        if (session != null
                && session.getAttribute(PERSON) instanceof String id
                && session.getAttribute(VERSION) instanceof Integer version
                && session.getAttribute(SINCE) instanceof Instant since
                && since.plus(PATIENCE).isAfter(clock.instant())) {
            return people.find(id).filter(Person::active).filter(p -> p.version() == version);
        }
        return Optional.empty();
    }

    /** How the person came so far. */
    public String how(HttpServletRequest request) {
        HttpSession session = request.getSession(false);
        return session != null && session.getAttribute(HOW) instanceof String how ? how : "password";
    }

    public void forget(HttpServletRequest request) {
        HttpSession session = request.getSession(false);
        if (session != null) {
            session.removeAttribute(PERSON);
            session.removeAttribute(VERSION);
            session.removeAttribute(SINCE);
            session.removeAttribute(HOW);
        }
    }
}
