package org.vanewright.platform;

import java.util.List;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.ProblemDetail;
import org.vanewright.engineering.input.FieldProblem;

/** Problem documents (M. Nottingham, E. Wilde, S. Dalal, 2023, RFC 9457) as this service writes them. */
final class Problems {
    private Problems() {}

    static ProblemDetail of(HttpStatusCode status, String title, String detail) {
        ProblemDetail problem = ProblemDetail.forStatusAndDetail(status, detail);
        problem.setTitle(title);
        return problem;
    }

    /** As {@link #of}, with {@code errors}: an array of field, value and what is allowed. */
    static ProblemDetail of(HttpStatusCode status, String title, String detail, List<FieldProblem> errors) {
        ProblemDetail problem = of(status, title, detail);
        problem.setProperty("errors", errors);
        return problem;
    }

    static ProblemDetail badInput(List<FieldProblem> errors) {
        String fields = errors.size() == 1 ? "One field cannot be used." : errors.size() + " fields cannot be used.";
        return of(HttpStatusCode.valueOf(400), "Input cannot be used", fields, errors);
    }
}
