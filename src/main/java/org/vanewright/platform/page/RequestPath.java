package org.vanewright.platform.page;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Objects;

/** The address of a request within this service, whatever prefix a proxy serves it under. */
public final class RequestPath {
    private RequestPath() {}

    /** As sent, still encoded, from the slash behind the prefix on; empty for what is no address at all. */
    public static String of(HttpServletRequest request) {
        return within(request, Objects.requireNonNullElse(request.getRequestURI(), ""));
    }

    /** The same of an address of this host; unchanged where it lies outside. */
    public static String within(HttpServletRequest request, String path) {
        String prefix = Objects.requireNonNullElse(request.getContextPath(), "");
        return path.startsWith(prefix + "/") ? path.substring(prefix.length()) : path;
    }
}
