package org.vanewright.platform.page;

import java.net.URI;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.view.RedirectView;

/** Leads the browser on after a form was taken (RFC 9110, 15.4.4). */
public final class SeeOther {
    private SeeOther() {}

    /** @param path of this service, beginning with a slash */
    public static ModelAndView to(String path) {
        RedirectView view = new RedirectView(path, true);
        view.setStatusCode(HttpStatus.SEE_OTHER);
        view.setExposeModelAttributes(false);
        view.setExpandUriTemplateVariables(false);
        return new ModelAndView(view);
    }

    /** As {@link #to}, with nothing but the address: for what also sets cookies or is no page. */
    public static ResponseEntity<Void> at(URI location) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER).location(location).build();
    }

    public static ResponseEntity<Void> at(String location) {
        return at(URI.create(location));
    }
}
