package org.vanewright.engineering.input;

/**
 * One unusable input.
 *
 * @param field path of the field as the caller wrote it, such as {@code surfaces[0].panels[1].outerChordMm}
 * @param value the refused value as text; {@code "missing"} when absent
 * @param allowed what is allowed, as a sentence fragment such as {@code "more than 0 mm, at most 60 mm"}
 */
public record FieldProblem(String field, String value, String allowed) {
    /** The same problem seen from one level further out: {@code prefix.field}. */
    public FieldProblem under(String prefix) {
        return new FieldProblem(field.isEmpty() ? prefix : prefix + "." + field, value, allowed);
    }
}
