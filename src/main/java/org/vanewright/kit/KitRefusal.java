package org.vanewright.kit;

import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/** Makes the refusal of a kit that was sent. */
final class KitRefusal {
    static final String FIELD = "file";

    private KitRefusal() {}

    /** @param value what was found, in words; long names are cut */
    static InvalidInputException of(String value, String allowed) {
        String cut = value.length() > 200 ? value.substring(0, 200) + "…" : value;
        return new InvalidInputException(new FieldProblem(FIELD, cut.replaceAll("\\p{Cntrl}", "?"), allowed));
    }

    static void require(boolean ok, String value, String allowed) {
        if (!ok) {
            throw of(value, allowed);
        }
    }
}
