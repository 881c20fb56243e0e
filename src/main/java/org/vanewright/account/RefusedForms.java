package org.vanewright.account;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.net.URI;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.web.access.AccessDeniedHandler;
import org.springframework.stereotype.Component;
import org.vanewright.platform.form.ExpiredForms;
import org.vanewright.record.Actors;

/**
 * Answers a form without the token of its session, which is what a form sends that stood open while the session ended:
 * nothing is done, and its text waits behind the sign-in.
 */
@Component
class RefusedForms implements AccessDeniedHandler {
    private final ExpiredForms forms;
    private final Actors actors;

    RefusedForms(ExpiredForms forms, Actors actors) {
        this.forms = forms;
        this.actors = actors;
    }

    @Override
    public void handle(HttpServletRequest request, HttpServletResponse response, AccessDeniedException refusal)
            throws IOException {
        Optional<URI> next = forms.keep(request, actors.current().signedIn());
        if (next.isEmpty()) {
            response.sendError(HttpServletResponse.SC_FORBIDDEN);
            return;
        }
        response.setStatus(HttpServletResponse.SC_SEE_OTHER);
        response.setHeader(HttpHeaders.LOCATION, next.get().toString());
    }
}
