package org.vanewright.account;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.time.Instant;
import org.springframework.security.core.context.DeferredSecurityContext;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.web.context.HttpRequestResponseHolder;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.session.FindByIndexNameSessionRepository;
import org.springframework.stereotype.Component;

/**
 * Keeps in the session who signed in and when: plain values, so that a later version of a library can still read them.
 * The person's id stands under the name by which the store finds all sessions of one person.
 */
@Component
class SessionContexts implements SecurityContextRepository {
    private static final String PERSON = FindByIndexNameSessionRepository.PRINCIPAL_NAME_INDEX_NAME;
    private static final String SINCE = "signed-in-at";

    /** @deprecated by the interface; nothing calls it. */
    @Deprecated
    @Override
    public SecurityContext loadContext(HttpRequestResponseHolder exchange) {
        return loadDeferredContext(exchange.getRequest()).get();
    }

    @Override
    public DeferredSecurityContext loadDeferredContext(HttpServletRequest request) {
        return new Deferred(request);
    }

    @Override
    public void saveContext(SecurityContext context, HttpServletRequest request, HttpServletResponse response) {
        if (context.getAuthentication() instanceof PersonAuthentication person) {
            HttpSession session = request.getSession(true);
            session.setAttribute(PERSON, person.personId());
            session.setAttribute(SINCE, person.since());
        }
    }

    @Override
    public boolean containsContext(HttpServletRequest request) {
        HttpSession session = request.getSession(false);
        return session != null && session.getAttribute(PERSON) != null;
    }

    /** Reads the session when it is first asked for; most requests never do. */
    private static final class Deferred implements DeferredSecurityContext {
        private final HttpServletRequest request;

        Deferred(HttpServletRequest request) {
            this.request = request;
        }

        @Override
        public SecurityContext get() {
            SecurityContext context = SecurityContextHolder.createEmptyContext();
            HttpSession session = request.getSession(false);
            if (session != null
                    && session.getAttribute(PERSON) instanceof String personId
                    && session.getAttribute(SINCE) instanceof Instant since) {
                context.setAuthentication(PersonAuthentication.bySignIn(personId, since));
            }
            return context;
        }

        @Override
        public boolean isGenerated() {
            return false;
        }
    }
}
