package org.vanewright.platform;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Set;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Refuses forms that another site makes a visitor's browser send. Browsers say where a request comes from in
 * {@code Sec-Fetch-Site} (W3C Fetch Metadata Request Headers); programs send no such header and are let
 * through. Calculations change nothing, so anybody's page may ask for one.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 10)
class ForeignForms extends OncePerRequestFilter {
    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
    private static final Set<String> OWN = Set.of("same-origin", "none");

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String site = request.getHeader("Sec-Fetch-Site");
        boolean calculation = request.getRequestURI().contains("/api/v1/calculations/");
        if (!calculation && site != null && !OWN.contains(site) && !READING.contains(request.getMethod())) {
            response.sendError(HttpServletResponse.SC_FORBIDDEN);
            return;
        }
        chain.doFilter(request, response);
    }
}
