package org.vanewright.platform;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.web.servlet.ModelAndView;

/** Answers while an {@link Outage} lasts, without asking the database for anything. */
final class Outages {
    private static final Logger LOG = LoggerFactory.getLogger(Outages.class);

    private Outages() {}

    static ResponseEntity<ProblemDetail> problem(Outage outage, Throwable error) {
        note(outage, error);
        return ResponseEntity.status(outage.status())
                .header(HttpHeaders.RETRY_AFTER, Outage.RETRY_AFTER_S)
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(document(outage));
    }

    static ProblemDetail document(Outage outage) {
        return Problems.of(outage.status(), outage.title(), outage.detail());
    }

    /** What the frame of a page would read of the database is left out. */
    static ModelAndView page(Outage outage, Throwable error, HttpServletRequest request, HttpServletResponse response) {
        note(outage, error);
        request.removeAttribute("instance");
        tell(response);
        return ProblemPage.of(outage.status(), outage.title(), outage.detail(), null);
    }

    static void tell(HttpServletResponse response) {
        response.setHeader(HttpHeaders.RETRY_AFTER, Outage.RETRY_AFTER_S);
        response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
    }

    static void note(Outage outage, Throwable error) {
        LOG.warn("{}: {}", outage, error.toString());
    }
}
