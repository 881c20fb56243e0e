package org.vanewright.platform.page;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Answers 400 where parameters cannot be decoded or are too many. The container reports that as an exception on first
 * use, which otherwise looks like a fault of the service. Uploads are read later, by their controller.
 */
@Component
class ReadableParameters extends OncePerRequestFilter {
    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        if (isReadable(request)) {
            chain.doFilter(request, response);
        } else {
            response.sendError(HttpServletResponse.SC_BAD_REQUEST);
        }
    }

    private static boolean isReadable(HttpServletRequest request) {
        String type = request.getContentType();
        if (type != null && type.regionMatches(true, 0, "multipart/", 0, "multipart/".length())) {
            return true;
        }
        try {
            request.getParameterMap();
            return true;
        } catch (IllegalStateException e) {
            return false;
        }
    }
}
