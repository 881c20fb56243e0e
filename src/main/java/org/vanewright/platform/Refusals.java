package org.vanewright.platform;

import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
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
}
