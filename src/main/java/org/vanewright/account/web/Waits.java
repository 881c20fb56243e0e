package org.vanewright.account.web;

import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;

/** Answers that ask for patience after too many attempts. */
final class Waits {
    private Waits() {}

    /** Sets the answer's status and says to programs how long to wait. */
    static void set(HttpServletResponse response, Duration delay) {
        response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
        response.setHeader(HttpHeaders.RETRY_AFTER, Long.toString(seconds(delay)));
    }

    static String words(Duration delay) {
        long seconds = seconds(delay);
        String time = seconds < 90 ? seconds + " seconds" : (seconds + 59) / 60 + " minutes";
        return "Too many attempts. Wait " + time + ", then try again.";
    }

    private static long seconds(Duration delay) {
        return delay.plusMillis(999).toSeconds();
    }
}
