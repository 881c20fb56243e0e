package org.vanewright.platform;

import static java.nio.charset.StandardCharsets.UTF_8;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.security.MessageDigest;
import java.util.Objects;
import java.util.Set;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import org.vanewright.platform.page.RequestPath;

/**
 * Measures and the list of parts are for whoever runs the service: they are there only for a caller with the key, and not
 * at all where no key is set.
 */
@Component
class ScrapeKey extends OncePerRequestFilter {
    private static final Set<String> GUARDED = Set.of("prometheus", "sbom");
    private static final String BASE = "/actuator/";

    private final byte[] wanted;

    ScrapeKey(@Value("${vanewright.metrics-key:}") String key) {
        wanted = key.isBlank() ? new byte[0] : ("Bearer " + key.strip()).getBytes(UTF_8);
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String path = RequestPath.of(request);
        return !path.startsWith(BASE)
                || !GUARDED.contains(path.substring(BASE.length()).split("[/;]", 2)[0]);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        String given = Objects.requireNonNullElse(request.getHeader(HttpHeaders.AUTHORIZATION), "");
        if (wanted.length == 0 || !MessageDigest.isEqual(wanted, given.getBytes(UTF_8))) {
            response.sendError(HttpServletResponse.SC_NOT_FOUND);
            return;
        }
        chain.doFilter(request, response);
    }
}
