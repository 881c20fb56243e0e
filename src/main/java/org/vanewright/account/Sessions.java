package org.vanewright.account;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.time.Clock;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.security.web.csrf.CsrfTokenRepository;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.session.Session;
import org.springframework.stereotype.Component;

/** Begins and ends sessions of people. */
@Component
@EnableConfigurationProperties(SessionSettings.class)
public class Sessions {
    private final SecurityContextRepository contexts;
    private final CsrfTokenRepository tokens;
    private final FindByIndexNameSessionRepository<? extends Session> sessions;
    private final SigningIn signingIn;
    private final SessionSettings settings;
    private final Clock clock;

    Sessions(
            SecurityContextRepository contexts,
            CsrfTokenRepository tokens,
            FindByIndexNameSessionRepository<? extends Session> sessions,
            SigningIn signingIn,
            SessionSettings settings,
            Clock clock) {
        this.contexts = contexts;
        this.tokens = tokens;
        this.sessions = sessions;
        this.signingIn = signingIn;
        this.settings = settings;
        this.clock = clock;
    }

    /**
     * Makes the caller's session that person's. Its id and its token for forms are new, so that nobody else knows them;
     * text that was kept for the person stays.
     *
     * @param how the person proved who they are, for the log
     */
    public void begin(HttpServletRequest request, HttpServletResponse response, Person person, String how) {
        HttpSession session = request.getSession(true);
        request.changeSessionId();
        session.setMaxInactiveInterval(Math.toIntExact(settings.idle().toSeconds()));
        tokens.saveToken(null, request, response);
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(PersonAuthentication.bySignIn(person.id(), clock.instant()));
        SecurityContextHolder.setContext(context);
        contexts.saveContext(context, request, response);
        CurrentActors.forget();
        signingIn.noted(person, how);
    }

    /** Ends the caller's session. */
    public void end(HttpServletRequest request) {
        HttpSession session = request.getSession(false);
        if (session != null) {
            session.invalidate();
        }
        SecurityContextHolder.clearContext();
        CurrentActors.forget();
    }

    /** Ends every session of a person; outside of transactions, since the store has its own. */
    public void endAll(String personId) {
        sessions.findByPrincipalName(personId).keySet().forEach(sessions::deleteById);
    }

    /** When the caller signed in; null for a visitor. */
    static @Nullable Instant since() {
        return SecurityContextHolder.getContext().getAuthentication() instanceof PersonAuthentication person
                ? person.since()
                : null;
    }
}
