package org.vanewright.platform.editing;

import org.springframework.http.HttpStatus;
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
}
