package org.vanewright.engineering.input;

import java.util.List;
import java.util.stream.Collectors;

/** Input that cannot be computed with; carries every problem found, never just the first. */
public final class InvalidInputException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<FieldProblem> problems;

    public InvalidInputException(List<FieldProblem> problems) {
        super(problems.stream()
                .map(p -> p.field() + " = " + p.value() + ": " + p.allowed())
                .collect(Collectors.joining("; ")));
        this.problems = List.copyOf(problems);
    }

    public InvalidInputException(FieldProblem problem) {
        this(List.of(problem));
    }

    public List<FieldProblem> problems() {
        return problems;
    }
}
