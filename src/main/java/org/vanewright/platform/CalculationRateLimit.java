package org.vanewright.platform;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;
import org.springframework.web.util.UrlPathHelper;
import org.vanewright.platform.page.RequestPath;

/**
 * Bounds how many calculations one address may ask for in a minute. It keeps one caller from taking the machine from the
 * others; each instance counts for itself, since it guards that instance's processors.
 */
@Component
@Order(10)
class CalculationRateLimit extends OncePerRequestFilter {
    private static final String GUARDED = "/api/v1/calculations/";
    private static final String GUARDED_PAGES = "/bench/";
    private static final List<String> GUARDED_ENDS = List.of(
            "/study",
            "/suggestions",
            "/gauges",
            "/retention",
            "/retention.csv",
            "/evidence",
            "/evidence.csv",
            "/card.png",
            "/kit.zip");
    /** Sending kits and looking at them: each is kept on trial. */
    private static final String GUARDED_KITS = "/kits/import";

    private static final String API = "/api/";

    private final int perMinute;
    private final ProblemWriter problems;
    private final NetworkBuckets buckets;

    CalculationRateLimit(LimitSettings settings, ProblemWriter problems) {
        this.perMinute = settings.calculationsPerMinute();
        this.problems = problems;
        this.buckets = new NetworkBuckets(perMinute, settings.trackedAddresses());
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return !guards(UrlPathHelper.defaultInstance.getPathWithinApplication(request));
    }

    /** @param path decoded, as controllers see it */
    static boolean guards(String path) {
        return path.startsWith(GUARDED)
                || path.startsWith(GUARDED_PAGES)
                || path.contains(GUARDED_KITS)
                || GUARDED_ENDS.stream().anyMatch(path::endsWith);
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        long seconds = buckets.take(request.getRemoteAddr());
        if (seconds == 0) {
            chain.doFilter(request, response);
            return;
        }
        response.setHeader("Retry-After", Long.toString(seconds));
        if (!RequestPath.of(request).startsWith(API)) {
            response.sendError(HttpStatus.TOO_MANY_REQUESTS.value());
            return;
        }
        problems.write(
                response,
                Problems.of(
                        HttpStatus.TOO_MANY_REQUESTS,
                        "Too many requests",
                        "One address may ask for " + perMinute + " calculations a minute. Try again in " + seconds
                                + " s."));
    }
}
