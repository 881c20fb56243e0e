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
import org.springframework.util.unit.DataSize;
import org.springframework.web.filter.OncePerRequestFilter;
import org.vanewright.platform.page.RequestPath;

/**
 * Refuses a larger body under {@code /api} than the settings allow, whether or not its length was announced,
 * and whatever its type, but for files where {@link LargeUploads} are.
 */
@Component
@Order(20)
class ApiBodyLimit extends OncePerRequestFilter {
    private final DataSize limit;
    private final ProblemWriter problems;
    private final List<LargeUploads> larger;

    ApiBodyLimit(LimitSettings settings, ProblemWriter problems, List<LargeUploads> larger) {
        this.limit = settings.apiBody();
        this.problems = problems;
        this.larger = larger;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String path = RequestPath.of(request);
        return !path.startsWith("/api/") || isLarge(request, path);
    }

    /** Its parts go to disk, within the server's limits of them. */
    private boolean isLarge(HttpServletRequest request, String path) {
        String type = request.getContentType();
        return type != null
                && type.regionMatches(true, 0, "multipart/form-data", 0, "multipart/form-data".length())
                && larger.stream().anyMatch(l -> l.accepts(request.getMethod(), path));
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        int most = Math.toIntExact(limit.toBytes());
        boolean announcedTooLarge = request.getContentLengthLong() > most;
        byte[] body = announcedTooLarge ? new byte[0] : request.getInputStream().readNBytes(most + 1);
        if (announcedTooLarge || body.length > most) {
            String detail = "The request body may have at most " + limit.toKilobytes() + " KiB.";
            problems.write(response, Problems.of(HttpStatus.CONTENT_TOO_LARGE, "Request too large", detail));
            return;
        }
        chain.doFilter(new BufferedRequest(request, body), response);
    }
}
