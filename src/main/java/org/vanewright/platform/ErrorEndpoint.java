package org.vanewright.platform;

import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.ProblemDetail;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.ModelAndView;

/** Answers errors that reach no controller: an unknown address, a method or type nobody takes, a filter that failed. */
@Controller
class ErrorEndpoint implements ErrorController {
    private final ProblemWriter writer;

    ErrorEndpoint(ProblemWriter writer) {
        this.writer = writer;
    }

    @RequestMapping("${server.error.path:${error.path:/error}}")
    @Nullable
    ModelAndView error(HttpServletRequest request, HttpServletResponse response) throws IOException {
        int status = request.getAttribute(RequestDispatcher.ERROR_STATUS_CODE) instanceof Integer code ? code : 404;
        Object error = request.getAttribute(RequestDispatcher.ERROR_EXCEPTION);
        boolean api = String.valueOf(request.getAttribute(RequestDispatcher.ERROR_REQUEST_URI))
                .startsWith("/api/");
        Outage outage = Outage.of(error);
        if (outage != null && error instanceof Throwable thrown) {
            return answer(outage, thrown, api, request, response);
        }
        if (!api) {
            return error instanceof Throwable unexpected && status >= 500
                    ? ProblemPage.unexpected(unexpected)
                    : ProblemPage.ofStatus(HttpStatusCode.valueOf(status));
        }
        ProblemDetail problem =
                Problems.of(HttpStatusCode.valueOf(status), PlainWords.title(status), PlainWords.detail(status));
        if (error instanceof Throwable unexpected && status >= 500) {
            problem.setProperty("reference", UnexpectedErrors.log(unexpected));
        }
        writer.write(response, problem);
        return null;
    }

    private @Nullable ModelAndView answer(
            Outage outage, Throwable error, boolean api, HttpServletRequest request, HttpServletResponse response)
            throws IOException {
        if (!api) {
            return Outages.page(outage, error, request, response);
        }
        Outages.note(outage, error);
        Outages.tell(response);
        writer.write(response, Outages.document(outage));
        return null;
    }
}
