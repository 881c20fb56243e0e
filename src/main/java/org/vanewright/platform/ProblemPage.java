package org.vanewright.platform;

import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.web.servlet.ModelAndView;

/** The page that tells a person what went wrong: view {@code shared/problem}. */
final class ProblemPage {
    private ProblemPage() {}

    /**
     * @param reference under which the error is found in the log, for errors nobody foresaw
     */
    static ModelAndView of(HttpStatusCode status, String title, String detail, @Nullable String reference) {
        ModelAndView page = new ModelAndView("shared/problem");
        page.setStatus(status);
        page.addObject("status", status.value());
        page.addObject("title", title);
        page.addObject("detail", detail);
        page.addObject("reference", reference);
        return page;
    }

    static ModelAndView unexpected(Throwable error) {
        String reference = UnexpectedErrors.log(error);
        return of(HttpStatus.INTERNAL_SERVER_ERROR, UnexpectedErrors.TITLE, UnexpectedErrors.DETAIL, reference);
    }

    /** For a status that comes without an exception of ours. */
    static ModelAndView ofStatus(HttpStatusCode status) {
        return of(status, PlainWords.title(status.value()), PlainWords.detail(status.value()), null);
    }
}
