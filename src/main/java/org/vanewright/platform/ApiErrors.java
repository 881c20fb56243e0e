package org.vanewright.platform;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.TypeMismatchException;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.ProblemDetail;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.web.bind.MethodArgumentNotValidException;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.bind.annotation.RestControllerAdvice;
import org.springframework.web.context.request.NativeWebRequest;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.servlet.mvc.method.annotation.ResponseEntityExceptionHandler;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.record.DraftClosedException;
import org.vanewright.record.DraftConflictException;
import org.vanewright.record.DraftNotFoundException;
import org.vanewright.record.NotAllowedException;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RevisionConflictException;
import org.vanewright.record.SignInNeededException;
import org.vanewright.record.web.DraftBody;
import org.vanewright.record.web.RevisionBody;

/** Turns what a REST controller throws into a problem document (RFC 9457). */
@RestControllerAdvice(annotations = RestController.class)
@Order(Ordered.HIGHEST_PRECEDENCE)
class ApiErrors extends ResponseEntityExceptionHandler {
    @ExceptionHandler
    ResponseEntity<ProblemDetail> handle(InvalidInputException e) {
        return answer(Problems.badInput(e.problems()));
    }

    @ExceptionHandler({RecordNotFoundException.class, DraftNotFoundException.class})
    ResponseEntity<ProblemDetail> handleMissing(RuntimeException e) {
        return answer(Problems.of(HttpStatus.NOT_FOUND, "Not found", String.valueOf(e.getMessage())));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> handle(RevisionConflictException e) {
        return changedMeanwhile(e, RevisionBody.of(e.current()));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> handle(SignInNeededException e) {
        return ResponseEntity.status(HttpStatus.UNAUTHORIZED)
                .header(HttpHeaders.WWW_AUTHENTICATE, Refusals.CHALLENGE)
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(Problems.of(
                        HttpStatus.UNAUTHORIZED, "Sign in first", "This needs a token in the Authorization header."));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> handle(NotAllowedException e) {
        return answer(Problems.of(HttpStatus.FORBIDDEN, "Not allowed", String.valueOf(e.getMessage())));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> handle(DraftConflictException e) {
        return changedMeanwhile(e, DraftBody.of(e.current(), null));
    }

    private static ResponseEntity<ProblemDetail> changedMeanwhile(Exception e, Object current) {
        ProblemDetail problem = Problems.of(HttpStatus.CONFLICT, "Changed meanwhile", String.valueOf(e.getMessage()));
        problem.setProperty("current", current);
        return answer(problem);
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> handle(DraftClosedException e) {
        return answer(Problems.of(HttpStatus.CONFLICT, "Not possible now", String.valueOf(e.getMessage())));
    }

    @ExceptionHandler
    ResponseEntity<ProblemDetail> handleUnexpected(Exception e) {
        Outage outage = Outage.of(e);
        if (outage != null) {
            return Outages.problem(outage, e);
        }
        ProblemDetail problem =
                Problems.of(HttpStatus.INTERNAL_SERVER_ERROR, UnexpectedErrors.TITLE, UnexpectedErrors.DETAIL);
        problem.setProperty("reference", UnexpectedErrors.log(e));
        return answer(problem);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleHttpMessageNotReadable(
            HttpMessageNotReadableException e, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        BufferedRequest buffered =
                request instanceof NativeWebRequest web ? web.getNativeRequest(BufferedRequest.class) : null;
        byte[] body = buffered == null ? new byte[0] : buffered.body();
        return respond(Problems.badInput(UnreadableJson.explain(e.getCause(), body)), headers);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleMethodArgumentNotValid(
            MethodArgumentNotValidException e, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        List<FieldProblem> problems = e.getBindingResult().getFieldErrors().stream()
                .map(field -> new FieldProblem(
                        field.getField(),
                        field.getRejectedValue() == null ? "missing" : String.valueOf(field.getRejectedValue()),
                        String.valueOf(field.getDefaultMessage())))
                .toList();
        return respond(Problems.badInput(problems), headers);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleMissingServletRequestParameter(
            MissingServletRequestParameterException e, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        FieldProblem problem = new FieldProblem(e.getParameterName(), "missing", "a value");
        return respond(Problems.badInput(List.of(problem)), headers);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleTypeMismatch(
            TypeMismatchException e, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        String name = e instanceof MethodArgumentTypeMismatchException argument
                ? argument.getName()
                : String.valueOf(e.getPropertyName());
        String value = String.valueOf(e.getValue());
        return respond(
                Problems.badInput(List.of(new FieldProblem(name, value, UnreadableJson.allowed(e.getRequiredType())))),
                headers);
    }

    @Override
    protected @Nullable ResponseEntity<Object> handleExceptionInternal(
            Exception e, @Nullable Object body, HttpHeaders headers, HttpStatusCode status, WebRequest request) {
        if (status.is5xxServerError()) {
            ResponseEntity<ProblemDetail> unexpected = handleUnexpected(e);
            return respond(Objects.requireNonNull(unexpected.getBody()), unexpected.getHeaders());
        }
        // Always a problem document, also where the caller's Accept header asks for something else.
        // An exception's own headers may be read-only.
        HttpHeaders sent = new HttpHeaders();
        sent.putAll(headers);
        sent.setContentType(MediaType.APPLICATION_PROBLEM_JSON);
        return super.handleExceptionInternal(e, body, sent, status, request);
    }

    private static ResponseEntity<ProblemDetail> answer(ProblemDetail problem) {
        return ResponseEntity.status(problem.getStatus())
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(problem);
    }

    private static ResponseEntity<Object> respond(ProblemDetail problem, HttpHeaders headers) {
        return ResponseEntity.status(problem.getStatus())
                .headers(headers)
                .contentType(MediaType.APPLICATION_PROBLEM_JSON)
                .body(problem);
    }
}
