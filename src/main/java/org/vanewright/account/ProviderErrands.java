package org.vanewright.account;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.account.ProviderIdentity.Newcomer;

/** Remembers in a session what somebody went to a provider for, and who came back without an account. */
@Component
public class ProviderErrands {
    private static final String ERRAND = "provider.errand";
    private static final String DETAIL = "provider.errand-detail";
    private static final String ERRAND_SINCE = "provider.errand-since";
    private static final String ISSUER = "provider.issuer";
    private static final String SUBJECT = "provider.subject";
    private static final String PROVIDER = "provider.name";
    private static final String EMAIL = "provider.email";
    private static final String NAME = "provider.person";
    private static final String SINCE = "provider.since";
    private static final Duration PATIENCE = Duration.ofMinutes(15);

    private final Clock clock;

    ProviderErrands(Clock clock) {
        this.clock = clock;
    }

    /** What somebody goes to a provider for. */
    public enum Purpose {
        /** To sign in; then on to a path. */
        SIGN_IN,
        /** To link their account here, by the person's id. */
        LINK,
        /** To join by an invitation, by its secret. */
        JOIN,
        /** To ask for an account. */
        REGISTER
    }

    /** @param detail as the purpose says; may be empty */
    public record Errand(Purpose purpose, String detail) {}

    public void begin(HttpServletRequest request, Errand errand) {
        HttpSession session = request.getSession(true);
        session.setAttribute(ERRAND, errand.purpose().name());
        session.setAttribute(DETAIL, errand.detail());
        session.setAttribute(ERRAND_SINCE, clock.instant());
    }

    /** Once; to sign in where nothing else is remembered. */
    Errand take(HttpServletRequest request) {
        HttpSession session = request.getSession(false);
        if (session == null
                || !(session.getAttribute(ERRAND) instanceof String purpose)
                || !(session.getAttribute(DETAIL) instanceof String detail)
                || !fresh(session.getAttribute(ERRAND_SINCE))) {
            return new Errand(Purpose.SIGN_IN, "");
        }
        session.removeAttribute(ERRAND);
        session.removeAttribute(DETAIL);
        session.removeAttribute(ERRAND_SINCE);
        return new Errand(Purpose.valueOf(purpose), detail);
    }

    /** Remembers somebody whom a provider vouches for; nobody is signed in by it, and the session's id is new. */
    void remember(HttpServletRequest request, Newcomer newcomer) {
        HttpSession session = request.getSession(true);
        request.changeSessionId();
        session.setAttribute(ISSUER, newcomer.identity().issuer());
        session.setAttribute(SUBJECT, newcomer.identity().subject());
        session.setAttribute(PROVIDER, newcomer.identity().provider());
        session.setAttribute(EMAIL, newcomer.email());
        session.setAttribute(NAME, newcomer.name());
        session.setAttribute(SINCE, clock.instant());
    }

    /** Who came back from a provider in this session and has no account yet. */
    public Optional<Newcomer> newcomer(HttpServletRequest request) {
        HttpSession session = request.getSession(false);
        if (session != null
                && session.getAttribute(ISSUER) instanceof String issuer
                && session.getAttribute(SUBJECT) instanceof String subject
                && session.getAttribute(PROVIDER) instanceof String provider
                && session.getAttribute(EMAIL) instanceof String email
                && session.getAttribute(NAME) instanceof String name
                && fresh(session.getAttribute(SINCE))) {
            return Optional.of(new Newcomer(new ProviderIdentity(issuer, subject, provider), email, name));
        }
        return Optional.empty();
    }

    public void forgetNewcomer(HttpServletRequest request) {
        HttpSession session = request.getSession(false);
        if (session != null) {
            session.removeAttribute(ISSUER);
            session.removeAttribute(SUBJECT);
            session.removeAttribute(PROVIDER);
            session.removeAttribute(EMAIL);
            session.removeAttribute(NAME);
            session.removeAttribute(SINCE);
        }
    }

    private boolean fresh(@Nullable Object since) {
        return since instanceof Instant at && at.plus(PATIENCE).isAfter(clock.instant());
    }
}
