package org.vanewright.platform;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.time.Duration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;

/** Answers of filters to programs that may not come in. */
@Component
public class Refusals {
    /** Tells a program which way of signing in this service knows (RFC 9110, 11.6.1). */
    static final String CHALLENGE = "Bearer realm=\"Vanewright\"";

    private final ProblemWriter problems;

    Refusals(ProblemWriter problems) {
        this.problems = problems;
    }

    /** 401: the token is not known here. */
    public void unknownToken(HttpServletResponse response) throws IOException {
        response.setHeader(HttpHeaders.WWW_AUTHENTICATE, CHALLENGE + ", error=\"invalid_token\"");
        problems.write(
                response,
                Problems.of(HttpStatus.UNAUTHORIZED, "Token not known", "This token is unknown, revoked or expired."));
    }

    /** 429: too many tokens that are not known here came from one address. */
    public void tooManyTokens(HttpServletResponse response, Duration delay) throws IOException {
        long seconds = delay.plusMillis(999).toSeconds();
        response.setHeader(HttpHeaders.RETRY_AFTER, Long.toString(seconds));
        problems.write(
                response,
                Problems.of(
                        HttpStatus.TOO_MANY_REQUESTS,
                        "Too many requests",
                        "Too many tokens from this address were refused. Try again in " + seconds + " s."));
    }
}
