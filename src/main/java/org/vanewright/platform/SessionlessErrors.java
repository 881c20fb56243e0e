package org.vanewright.platform;

import jakarta.servlet.FilterChain;
import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpSession;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/** While the database is away the page that says so has no session, which would be read from there. */
@Component
@Order(0)
class SessionlessErrors extends OncePerRequestFilter {
    @Override
    protected boolean shouldNotFilterErrorDispatch() {
        return false;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        boolean away = Outage.of(request.getAttribute(RequestDispatcher.ERROR_EXCEPTION)) == Outage.DATABASE_AWAY;
        chain.doFilter(away ? new Sessionless(request) : request, response);
    }

    private static final class Sessionless extends HttpServletRequestWrapper {
        Sessionless(HttpServletRequest request) {
            super(request);
        }

        @Override
        public @Nullable HttpSession getSession(boolean create) {
            return null;
        }

        @Override
        public @Nullable HttpSession getSession() {
            return null;
        }
    }
}
