package org.vanewright.platform.page;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Gives every template, error pages included, {@code units}, {@code noteText} and {@code here}, the path and query of
 * the page.
 */
@Component
class PageContextFilter extends OncePerRequestFilter {
    static final String UNITS_COOKIE = "units";

    private final NoteText notes;

    PageContextFilter(NoteText notes) {
        this.notes = notes;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        request.setAttribute("units", new Units(UnitSystem.of(cookie(request))));
        request.setAttribute("noteText", notes);
        request.setAttribute("here", here(request));
        chain.doFilter(request, response);
    }

    @Override
    protected boolean shouldNotFilterErrorDispatch() {
        return false;
    }

    /** Only a page that was read can be gone back to. */
    private static String here(HttpServletRequest request) {
        if (!"GET".equals(request.getMethod())) {
            return "/";
        }
        String query = request.getQueryString();
        String path = RequestPath.of(request);
        return query == null ? path : path + "?" + query;
    }

    private static @Nullable String cookie(HttpServletRequest request) {
        Cookie @Nullable [] cookies = request.getCookies();
        return cookies == null
                ? null
                : Arrays.stream(cookies)
                        .filter(c -> UNITS_COOKIE.equals(c.getName()))
                        .map(Cookie::getValue)
                        .findFirst()
                        .orElse(null);
    }
}
