package org.vanewright.engineering.flightlog;

import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/** Files that are no logs. */
final class Refused {
    private Refused() {}

    static InvalidInputException file(String value, String allowed) {
        return new InvalidInputException(new FieldProblem("file", value, allowed));
    }
}
