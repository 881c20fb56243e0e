package org.vanewright.platform.form;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.github.bucket4j.Bucket;
import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.net.URISyntaxException;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.util.UriComponentsBuilder;
import org.vanewright.platform.LimitSettings;
import org.vanewright.platform.Networks;
import org.vanewright.platform.page.LocalPath;
import org.vanewright.platform.page.RequestPath;

/** Knows where a person goes on whose session ended, and keeps what they typed. */
@Component
public class ExpiredForms {
    public static final String SIGN_IN = "/sign-in";

    /** Pages whose forms are for people who are not signed in. */
    private static final List<String> FOR_VISITORS = List.of(SIGN_IN, "/join", "/set-up", "/reset");

    private final Cache<String, Bucket> buckets = Caffeine.newBuilder()
            .maximumSize(50_000)
            .expireAfterAccess(Duration.ofHours(2))
            .build();

    private final int keptAnHour;

    public ExpiredForms(LimitSettings limits) {
        keptAnHour = limits.keptFormsPerHour();
    }

    /**
     * Keeps the text of a form that was not taken.
     *
     * @param signedIn whether its sender is signed in now
     * @return where the sender goes; empty where there is nothing to go on with, or more than can be kept
     */
    public Optional<URI> keep(HttpServletRequest request, boolean signedIn) {
        if (!KeptForm.canKeep(request)) {
            return Optional.empty();
        }
        Map<String, String> fields = KeptForm.fields(request);
        if (fields.isEmpty() && signedIn) {
            return Optional.empty();
        }
        if (!fields.isEmpty() && !(mayKeep(request) && KeptForm.put(request, fields))) {
            return Optional.empty();
        }
        String path = RequestPath.of(request);
        boolean own = FOR_VISITORS.stream().anyMatch(p -> path.equals(p) || path.startsWith(p + "/"));
        return Optional.of(own || signedIn ? URI.create(back(request)) : signIn(back(request)));
    }

    /** The sign-in page, from which a person comes back to a path. */
    public static URI signIn(String back) {
        return UriComponentsBuilder.fromPath(SIGN_IN)
                .queryParam("back", "{back}")
                .build(LocalPath.orHome(back));
    }

    /** The page that a request is about: itself where it only reads, else the page with the form. */
    public static String back(HttpServletRequest request) {
        String path = RequestPath.of(request);
        if ("GET".equals(request.getMethod())) {
            String query = request.getQueryString();
            return LocalPath.orHome(query == null ? path : path + "?" + query);
        }
        String page = localPage(request.getHeader(HttpHeaders.REFERER), request.getHeader(HttpHeaders.HOST));
        return LocalPath.orHome(page == null ? path : RequestPath.within(request, page));
    }

    private static @Nullable String localPage(@Nullable String referer, @Nullable String host) {
        if (referer == null || host == null) {
            return null;
        }
        try {
            URI page = new URI(referer);
            String query = page.getRawQuery();
            return host.equals(page.getRawAuthority()) ? page.getRawPath() + (query == null ? "" : "?" + query) : null;
        } catch (URISyntaxException e) {
            return null;
        }
    }

    private boolean mayKeep(HttpServletRequest request) {
        return buckets.get(Networks.of(request.getRemoteAddr()), ignored -> bucket())
                .tryConsume(1);
    }

    private Bucket bucket() {
        return Bucket.builder()
                .addLimit(limit -> limit.capacity(keptAnHour).refillGreedy(keptAnHour, Duration.ofHours(1)))
                .build();
    }
}
