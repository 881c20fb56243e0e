package org.vanewright.platform.page;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Where a redirect may lead: a path on this service, never another host. */
public final class LocalPath {
    private static final Pattern SAFE =
            Pattern.compile("/(?![/\\\\])[A-Za-z0-9\\-._~/%]*(\\?[A-Za-z0-9\\-._~/%=&+,:;@!$'()*?\\[\\]]*)?");
    private static final Pattern STRAY_PERCENT = Pattern.compile("%(?![0-9A-Fa-f]{2})|[\\[\\]]");

    private LocalPath() {}

    /** The path if it is local and well formed, else {@code "/"}. */
    public static String orHome(@Nullable String path) {
        boolean safe = path != null
                && path.length() <= 2000
                && SAFE.matcher(path).matches()
                && !STRAY_PERCENT.matcher(path).find();
        return safe ? path : "/";
    }
}
