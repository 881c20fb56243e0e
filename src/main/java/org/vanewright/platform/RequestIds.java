package org.vanewright.platform;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.slf4j.MDC;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Gives each request an id, which stands on its log lines and in its answer; a proxy in front may have given it one
 * already.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
class RequestIds extends OncePerRequestFilter {
    static final String HEADER = "X-Request-Id";
    static final String KEY = "requestId";

    private static final Pattern GIVEN = Pattern.compile("[A-Za-z0-9_-]{8,64}");

    /** Of the request that this thread answers; null for work of its own. */
    static @Nullable String current() {
        return MDC.get(KEY);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String given = request.getHeader(HEADER);
        String id = given != null && GIVEN.matcher(given).matches()
                ? given
                : UUID.randomUUID().toString();
        request.setAttribute(RequestIds.class.getName(), id);
        answer(id, request, response, chain);
    }

    /** The page that tells of an error belongs to the request that failed. */
    @Override
    protected void doFilterNestedErrorDispatch(
            HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        answer(String.valueOf(request.getAttribute(RequestIds.class.getName())), request, response, chain);
    }

    @Override
    protected boolean shouldNotFilterErrorDispatch() {
        return false;
    }

    private static void answer(String id, HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        response.setHeader(HEADER, id);
        MDC.put(KEY, id);
        try {
            chain.doFilter(request, response);
        } finally {
            MDC.remove(KEY);
        }
    }
}
