package org.vanewright.platform;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpServletResponseWrapper;
import java.io.IOException;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Where the service lies under a prefix ({@code server.servlet.context-path}), what leads a browser on leads there: inside,
 * addresses begin at the service's own root.
 */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE + 1)
class PrefixedAddresses extends OncePerRequestFilter {
    private static final Set<String> LEADING_ON = Set.of("location", "hx-redirect");

    @Override
    protected boolean shouldNotFilter(HttpServletRequest request) {
        return request.getContextPath().isEmpty();
    }

    @Override
    protected boolean shouldNotFilterErrorDispatch() {
        return false;
    }

    @Override
    protected void doFilterInternal(HttpServletRequest request, HttpServletResponse response, FilterChain chain)
            throws ServletException, IOException {
        chain.doFilter(request, new Prefixed(response, request.getContextPath()));
    }

    private static final class Prefixed extends HttpServletResponseWrapper {
        private final String prefix;

        Prefixed(HttpServletResponse response, String prefix) {
            super(response);
            this.prefix = prefix;
        }

        @Override
        public void setHeader(String name, @Nullable String value) {
            super.setHeader(name, prefixed(name, value));
        }

        @Override
        public void addHeader(String name, @Nullable String value) {
            super.addHeader(name, prefixed(name, value));
        }

        private @Nullable String prefixed(String name, @Nullable String value) {
            boolean inside = value != null
                    && LEADING_ON.contains(name.toLowerCase(Locale.ROOT))
                    && value.startsWith("/")
                    && !value.startsWith("//");
            return inside && !(value + "/").startsWith(prefix + "/") ? prefix + value : value;
        }
    }
}
