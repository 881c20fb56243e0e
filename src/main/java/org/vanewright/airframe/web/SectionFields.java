package org.vanewright.airframe.web;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.CoordinateFile;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.SectionSpec.TrailingEdge;
import org.vanewright.platform.form.Form;

/**
 * The choice of a section: {@code kind} is {@value #NACA}, {@value #COORDINATES} or {@value #SAME} as the end before.
 * Beneath it stand {@code naca}, {@code trailingEdge}, {@code coordinates} (the text of a coordinate file) and
 * {@code title}.
 */
final class SectionFields {
    static final String NACA = "NACA";
    static final String COORDINATES = "COORDINATES";
    static final String SAME = "SAME";

    private SectionFields() {}

    static void put(Form form, String at, @Nullable SectionSpec section, @Nullable SectionSpec before) {
        if (section == null || section.equals(before)) {
            form.put(at + ".kind", before == null ? NACA : SAME).put(at + ".trailingEdge", TrailingEdge.BLUNT);
            return;
        }
        List<List<Double>> coordinates = section.coordinates();
        form.put(at + ".kind", coordinates == null ? NACA : COORDINATES)
                .put(at + ".naca", section.naca())
                .put(at + ".trailingEdge", section.trailingEdge() == null ? TrailingEdge.BLUNT : section.trailingEdge())
                .put(at + ".title", section.title())
                .put(at + ".coordinates", coordinates == null ? null : text(coordinates));
    }

    private static String text(List<List<Double>> coordinates) {
        return coordinates.stream()
                .map(p -> p.stream().map(String::valueOf).collect(Collectors.joining(" ")))
                .collect(Collectors.joining("\n"));
    }

    /**
     * The section as typed; null, with the problem noted, where coordinates cannot be read.
     *
     * @param known sections of the revision the form started from: text nobody touched stays the same section, since
     *     normalising it again would move the last digit
     */
    static @Nullable SectionSpec read(Form form, String at, @Nullable SectionSpec before, List<SectionSpec> known) {
        if (form.is(at + ".kind", SAME)) {
            return before;
        }
        if (form.is(at + ".kind", COORDINATES)) {
            return coordinates(form, at, known);
        }
        TrailingEdge edge = form.choice(at + ".trailingEdge", TrailingEdge.class);
        // Blunt is what an absent edge means, so one section is written in one way only.
        return new SectionSpec(form.text(at + ".naca"), edge == TrailingEdge.CLOSED ? edge : null, null, null);
    }

    private static @Nullable SectionSpec coordinates(Form form, String at, List<SectionSpec> known) {
        String typed = form.text(at + ".coordinates");
        if (typed == null) {
            return new SectionSpec(null, null, List.of(), form.text(at + ".title"));
        }
        String title = form.text(at + ".title");
        String lines = typed.replace("\r", "");
        Optional<List<List<Double>>> untouched = known.stream()
                .map(SectionSpec::coordinates)
                .filter(c -> c != null && text(c).equals(lines))
                .findFirst();
        if (untouched.isPresent()) {
            return new SectionSpec(null, null, untouched.get(), title);
        }
        try {
            SectionSpec read = CoordinateFile.parse(typed);
            return new SectionSpec(null, null, read.coordinates(), title == null ? read.title() : title);
        } catch (InvalidInputException e) {
            for (FieldProblem p : e.problems()) {
                String place = p.field().isEmpty() || p.field().startsWith("coordinates") ? "" : p.field() + ": ";
                form.refuse(new FieldProblem(at + ".coordinates", p.value(), place + p.allowed()));
            }
            return null;
        }
    }
}
