package org.vanewright.bench.web.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.CoordinateFile;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.SectionSpec.TrailingEdge;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;

/** The choice of a section: {@code kind}, and under it {@code naca} with {@code trailingEdge}, or {@code coordinates}. */
final class SectionFields {
    static final String KIND = "kind";
    static final String NACA = "naca";
    static final String COORDINATES = "coordinates";

    /** What fits into an address. */
    static final int LONGEST = 16_000;

    private static final String BY_NUMBER = "NACA";
    private static final String BY_COORDINATES = "COORDINATES";

    private SectionFields() {}

    static List<Field> all() {
        return List.of(
                Field.choice(
                        Field.Kind.RADIO,
                        KIND,
                        "Section",
                        List.of(new Option(BY_NUMBER, "NACA number"), new Option(BY_COORDINATES, "Coordinates"))),
                Field.of(Field.Kind.TEXT, NACA, "NACA number", "Four or five digits, such as 2412 or 23012.")
                        .in("for-naca"),
                Field.choice(
                                Field.Kind.SELECT,
                                "trailingEdge",
                                "Trailing edge",
                                Option.of(TrailingEdge.values(), e -> switch (e) {
                                    case BLUNT -> "Blunt, as published";
                                    case CLOSED -> "Closed";
                                }))
                        .in("for-naca"),
                Field.of(
                                Field.Kind.AREA,
                                COORDINATES,
                                "Coordinates",
                                "Two numbers a line: one loop, or the upper and the lower side as two lists. They are turned"
                                        + " and scaled to a chord of 1.")
                        .in("for-coordinates"));
    }

    /** Settles which kind was meant, so that an address may leave it out. */
    static void settle(Form form) {
        String kind = form.value(KIND);
        if (!kind.equals(BY_NUMBER) && !kind.equals(BY_COORDINATES)) {
            form.put(KIND, form.text(NACA) == null && form.text(COORDINATES) != null ? BY_COORDINATES : BY_NUMBER);
        }
        if (form.text("trailingEdge") == null) {
            form.put("trailingEdge", TrailingEdge.BLUNT);
        }
    }

    /** The section as typed; null, with the problem noted, where there is none that can be read. */
    static @Nullable SectionSpec read(Form form) {
        settle(form);
        return form.is(KIND, BY_COORDINATES) ? coordinates(form) : number(form);
    }

    private static @Nullable SectionSpec number(Form form) {
        TrailingEdge edge = form.choice("trailingEdge", TrailingEdge.class);
        String naca = form.text(NACA);
        if (naca == null) {
            form.refuse(new FieldProblem(NACA, "missing", "four or five digits, such as 2412"));
            return null;
        }
        return new SectionSpec(naca, edge, null, null);
    }

    private static @Nullable SectionSpec coordinates(Form form) {
        String typed = form.text(COORDINATES);
        if (typed == null || typed.length() > LONGEST) {
            form.refuse(new FieldProblem(
                    COORDINATES,
                    typed == null ? "missing" : typed.length() + " characters",
                    "a list of points of at most " + LONGEST + " characters"));
            return null;
        }
        try {
            return CoordinateFile.parse(typed);
        } catch (InvalidInputException e) {
            e.problems().forEach(p -> form.refuse(new FieldProblem(COORDINATES, p.value(), p.allowed())));
            return null;
        }
    }
}
