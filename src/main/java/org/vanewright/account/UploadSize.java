package org.vanewright.account;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import org.springframework.web.filter.OncePerRequestFilter;
import org.vanewright.platform.LargeUploads;
import org.vanewright.platform.Outage;
import org.vanewright.platform.page.RequestPath;

/** Refuses a form with more than the server reads, since the token in it cannot be read then. */
class UploadSize extends OncePerRequestFilter {
    /** Of a form whose files are small, such as photographs; the server itself allows the largest file anywhere. */
    private static final long MOST = 30L * 1024 * 1024;

    private final List<LargeUploads> larger;

    UploadSize(List<LargeUploads> larger) {
        this.larger = larger;
    }

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        String type = request.getContentType();
        return type == null || !type.regionMatches(true, 0, "multipart/", 0, "multipart/".length());
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        long length = request.getContentLengthLong();
        if (!isLarge(request) && (length > MOST || length < 0)) {
            response.sendError(HttpServletResponse.SC_REQUEST_ENTITY_TOO_LARGE);
            return;
        }
        try {
            request.getParameterMap();
        } catch (IllegalStateException e) {
            if (Outage.of(e) != null) {
                throw e;
            }
            response.sendError(HttpServletResponse.SC_REQUEST_ENTITY_TOO_LARGE);
            return;
        }
        chain.doFilter(request, response);
    }

    /** Without a session the token cannot fit, so that nobody gets to send much. */
    private boolean isLarge(HttpServletRequest request) {
        return request.getSession(false) != null
                && larger.stream().anyMatch(l -> l.accepts(request.getMethod(), RequestPath.of(request)));
    }
}
