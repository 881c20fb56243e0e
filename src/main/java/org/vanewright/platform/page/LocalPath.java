package org.vanewright.platform.page;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Where a redirect may lead: a path on this service, never another host. */
public final class LocalPath {
    private static final Pattern SAFE =
            Pattern.compile("/(?![/\\\\])[A-Za-z0-9\\-._~/%]*(\\?[A-Za-z0-9\\-._~/%=&+,:;@!$'()*?\\[\\]]*)?");
    private static final Pattern STRAY_PERCENT = Pattern.compile("%(?![0-9A-Fa-f]{2})|[\\[\\]]");

    private static final int LONGEST = 2000;

    private LocalPath() {}

    /** The path if it is local and well formed, else {@code "/"}. */
    public static String orHome(@Nullable String path) {
        if (path == null || path.length() > LONGEST || !SAFE.matcher(path).matches()) {
            return "/";
        }
        return STRAY_PERCENT.matcher(path).find() ? "/" : path;
    }
}
