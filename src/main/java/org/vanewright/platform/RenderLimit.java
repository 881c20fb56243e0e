package org.vanewright.platform;

import jakarta.servlet.http.HttpServletRequest;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.ErrorResponseException;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.context.request.WebRequest;

/** Bounds how many files one address may have made in a minute. What is kept already is sent without being counted. */
@Component
class RenderLimit {
    private final int perMinute;
    private final NetworkBuckets buckets;

    RenderLimit(LimitSettings settings) {
        this.perMinute = settings.rendersPerMinute();
        this.buckets = new NetworkBuckets(perMinute, settings.trackedAddresses());
    }

    /** @throws ErrorResponseException 429 with {@code Retry-After} */
    void admit(WebRequest request) {
        HttpServletRequest asked =
                request instanceof NativeWebRequest web ? web.getNativeRequest(HttpServletRequest.class) : null;
        long seconds = asked == null ? 0 : buckets.take(asked.getRemoteAddr());
        if (seconds > 0) {
            ErrorResponseException refusal = new ErrorResponseException(
                    HttpStatus.TOO_MANY_REQUESTS,
                    Problems.of(
                            HttpStatus.TOO_MANY_REQUESTS,
                            "Too many requests",
                            "One address may have " + perMinute + " files made a minute. Try again in " + seconds
                                    + " s."),
                    null);
            refusal.getHeaders().set(HttpHeaders.RETRY_AFTER, Long.toString(seconds));
            throw refusal;
        }
    }
}
