package org.vanewright.layout.web;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.drawing.sheet.Paper;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.layout.LayoutTemplates;

/**
 * Which template a person asked for.
 *
 * @param wing left or right
 * @param pattern whole rows or repeating strips
 * @param row counts from 1; absent means every row
 * @param paper for PDF
 * @param rollWidthMm for {@link Paper#ROLL}
 */
record TemplateRequest(
        Wing wing,
        LayoutTemplates.Pattern pattern,
        @Nullable Integer row,
        Paper paper,
        @Nullable Double rollWidthMm) {

    /** @throws org.vanewright.engineering.input.InvalidInputException naming each parameter that is not understood */
    static TemplateRequest of(
            @Nullable String side,
            @Nullable String pattern,
            @Nullable String row,
            @Nullable String paper,
            @Nullable String rollWidthMm) {
        Checks checks = new Checks();
        Wing wing = choice("side", side, Wing.LEFT, checks);
        LayoutTemplates.Pattern kind = choice("pattern", pattern, LayoutTemplates.Pattern.FULL, checks);
        Paper sheet = choice("paper", paper, Paper.A4, checks);
        Integer rowNumber = null;
        if (row != null && !row.isBlank()) {
            boolean number = row.matches("[1-9][0-9]?");
            checks.require(number, "row", row, "the number of a row, counting from 1");
            rowNumber = number ? Integer.valueOf(row) : null;
        }
        Double width = null;
        if (sheet.isRoll()) {
            width = number(rollWidthMm);
            checks.range("rollWidthMm", width, 250, 2000, "mm");
        }
        checks.throwIfAny();
        return new TemplateRequest(wing, kind, rowNumber, sheet, width);
    }

    private static <E extends Enum<E>> E choice(String field, @Nullable String typed, E otherwise, Checks checks) {
        if (typed == null || typed.isBlank()) {
            return otherwise;
        }
        E[] constants = otherwise.getDeclaringClass().getEnumConstants();
        for (E constant : constants) {
            if (constant.name().equals(typed.strip().toUpperCase(Locale.ROOT))) {
                return constant;
            }
        }
        String allowed = Arrays.stream(constants).map(Enum::name).collect(Collectors.joining(", "));
        checks.require(false, field, typed, "one of " + allowed);
        return otherwise;
    }

    private static @Nullable Double number(@Nullable String typed) {
        try {
            return typed == null || typed.isBlank() ? null : Double.valueOf(typed.strip());
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /** Everything the file depends on beside the layout. */
    String key() {
        return wing + " " + pattern + " " + row + " " + paper + " " + rollWidthMm;
    }
}
