package org.vanewright.account;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.security.core.context.SecurityContext;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.web.filter.OncePerRequestFilter;
import org.vanewright.platform.Refusals;

/**
 * Signs programs in by a token in {@code Authorization: Bearer} (M. Jones, D. Hardt, 2012, RFC 6750). A token that is
 * not known is refused even where none is needed, so that nobody believes to be signed in.
 */
class BearerFilter extends OncePerRequestFilter {
    private static final String SCHEME = "Bearer ";

    private final Optional<TokenSignIn> tokens;
    private final AttemptLimits limits;
    private final Refusals refusals;
    private final Clock clock;

    BearerFilter(Optional<TokenSignIn> tokens, AttemptLimits limits, Refusals refusals, Clock clock) {
        this.tokens = tokens;
        this.limits = limits;
        this.refusals = refusals;
        this.clock = clock;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String header = request.getHeader(HttpHeaders.AUTHORIZATION);
        if (header == null || !header.regionMatches(true, 0, SCHEME, 0, SCHEME.length())) {
            chain.doFilter(request, response);
            return;
        }
        String token = header.substring(SCHEME.length()).strip();
        Optional<TokenSignIn.Holder> holder = tokens.flatMap(t -> t.find(token));
        if (holder.isEmpty()) {
            refuse(request, response);
            return;
        }
        SecurityContext context = SecurityContextHolder.createEmptyContext();
        context.setAuthentication(PersonAuthentication.byToken(
                holder.get().personId(), clock.instant(), holder.get().scope()));
        SecurityContextHolder.setContext(context);
        chain.doFilter(request, response);
    }

    private void refuse(HttpServletRequest request, HttpServletResponse response) throws IOException {
        Duration delay = limits.refusedToken(request.getRemoteAddr());
        if (delay.isZero()) {
            refusals.unknownToken(response);
        } else {
            refusals.tooManyTokens(response, delay);
        }
    }
}
