package org.vanewright.platform;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.net.URI;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.beans.TypeMismatchException;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.ServletRequestBindingException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.ExpiredForms;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.record.DraftClosedException;
import org.vanewright.record.DraftConflictException;
import org.vanewright.record.DraftNotFoundException;
import org.vanewright.record.NotAllowedException;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RevisionConflictException;
import org.vanewright.record.SignInNeededException;

/** Turns what a page's controller throws into a page. REST controllers are served by {@link ApiErrors} before. */
@ControllerAdvice(annotations = Controller.class)
@Order
class PageErrors {
    private final ExpiredForms forms;

    PageErrors(ExpiredForms forms) {
        this.forms = forms;
    }

    @ExceptionHandler
    ModelAndView handle(InvalidInputException e) {
        String detail = e.problems().stream()
                .map(p -> p.field() + " is " + p.value() + ", but must be " + p.allowed() + ".")
                .collect(Collectors.joining(" "));
        return ProblemPage.of(HttpStatus.BAD_REQUEST, "Input cannot be used", detail, null);
    }

    @ExceptionHandler({RecordNotFoundException.class, DraftNotFoundException.class})
    ModelAndView handleMissing(RuntimeException e) {
        return ProblemPage.of(HttpStatus.NOT_FOUND, "Not found", String.valueOf(e.getMessage()), null);
    }

    @ExceptionHandler({RevisionConflictException.class, DraftConflictException.class})
    ModelAndView handleConflict(RuntimeException e) {
        return ProblemPage.of(HttpStatus.CONFLICT, "Changed meanwhile", String.valueOf(e.getMessage()), null);
    }

    /** What was typed into a form waits behind the sign-in. A script's request is led there as a whole page. */
    @ExceptionHandler
    Object handle(SignInNeededException e, HttpServletRequest request) {
        if (request.getHeader("HX-Request") != null) {
            return ResponseEntity.status(HttpStatus.UNAUTHORIZED)
                    .header(
                            "HX-Redirect",
                            ExpiredForms.signIn(ExpiredForms.back(request)).toString())
                    .build();
        }
        Optional<URI> next = "GET".equals(request.getMethod())
                ? Optional.of(ExpiredForms.signIn(ExpiredForms.back(request)))
                : forms.keep(request, false);
        return next.<Object>map(to -> SeeOther.at(to))
                .orElseGet(() ->
                        ProblemPage.of(HttpStatus.FORBIDDEN, "Sign in first", String.valueOf(e.getMessage()), null));
    }

    @ExceptionHandler
    ModelAndView handle(NotAllowedException e) {
        return ProblemPage.of(HttpStatus.FORBIDDEN, "Not allowed", String.valueOf(e.getMessage()), null);
    }

    @ExceptionHandler
    ModelAndView handle(DraftClosedException e) {
        return ProblemPage.of(HttpStatus.CONFLICT, "Not possible now", String.valueOf(e.getMessage()), null);
    }

    @ExceptionHandler
    ModelAndView handle(MaxUploadSizeExceededException e) {
        return ProblemPage.of(
                HttpStatus.CONTENT_TOO_LARGE,
                "File too large",
                "A photograph may have at most 8 MiB, a file of section coordinates 64 KiB, a recorded log 150 MB.",
                null);
    }

    @ExceptionHandler({TypeMismatchException.class, ServletRequestBindingException.class})
    ModelAndView handleAddress() {
        return ProblemPage.ofStatus(HttpStatus.BAD_REQUEST);
    }

    @ExceptionHandler
    ModelAndView handleUnexpected(Exception e, HttpServletRequest request, HttpServletResponse response) {
        Outage outage = Outage.of(e);
        if (outage != null) {
            return Outages.page(outage, e, request, response);
        }
        if (e instanceof ErrorResponse known && !known.getStatusCode().is5xxServerError()) {
            String wait = known.getHeaders().getFirst(HttpHeaders.RETRY_AFTER);
            if (wait != null) {
                response.setHeader(HttpHeaders.RETRY_AFTER, wait);
            }
            return ProblemPage.ofStatus(known.getStatusCode());
        }
        return ProblemPage.unexpected(e);
    }
}
