package org.vanewright.engineering.input;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Collects the problems of one input, so that a person sees all of them at once. */
public final class Checks {
    private static final int EARLIEST_YEAR = 1900;

    private final List<FieldProblem> problems = new ArrayList<>();

    /** Adds a problem unless {@code ok}; returns {@code ok}. */
    public boolean require(boolean ok, String field, @Nullable Object value, String allowed) {
        if (!ok) {
            problems.add(new FieldProblem(field, text(value), allowed));
        }
        return ok;
    }

    /** The number must be present, finite and within {@code [low, high]}; {@code unit} may be empty. */
    public boolean range(String field, @Nullable Double value, double low, double high, String unit) {
        boolean ok = value != null && Double.isFinite(value) && value >= low && value <= high;
        // Most figures are in range, and a campaign has thousands of them: the text is made where it is needed.
        return ok || require(false, field, value, "a number from " + plain(low, unit) + " to " + plain(high, unit));
    }

    /** As {@link #range}, but absent is fine. */
    public boolean optionalRange(String field, @Nullable Double value, double low, double high, String unit) {
        return value == null || range(field, value, low, high, unit);
    }

    /** One line of readable text, see {@link ReadableText}, not blank and no longer than {@code maxLength}. */
    public boolean text(String field, @Nullable String value, int maxLength) {
        boolean ok = value != null && ReadableText.shows(value) && value.length() <= maxLength;
        return require(ok, field, abbreviate(value), "text of 1 to " + maxLength + " characters")
                && require(ReadableText.isLine(value), field, abbreviate(value), "one line without control characters");
    }

    /** Readable text, see {@link ReadableText}, not blank and no longer than {@code maxLength}; it may have lines. */
    public boolean prose(String field, @Nullable String value, int maxLength) {
        boolean ok = value != null && ReadableText.shows(value);
        return require(ok, field, abbreviate(value), "text of 1 to " + maxLength + " characters")
                && optionalText(field, value, maxLength);
    }

    /** Readable text, see {@link ReadableText}, absent or no longer than {@code maxLength}; it may have lines. */
    public boolean optionalText(String field, @Nullable String value, int maxLength) {
        boolean ok = value == null || value.length() <= maxLength;
        return require(ok, field, abbreviate(value), "at most " + maxLength + " characters")
                && require(
                        ReadableText.isProse(value),
                        field,
                        abbreviate(value),
                        "no control characters but the ends of lines");
    }

    /** The value must be present. */
    public boolean present(String field, @Nullable Object value, String allowed) {
        return require(value != null, field, value, allowed);
    }

    /** A calendar day as in ISO 8601, from 1900 on, such as {@code 2026-03-14}. */
    public boolean day(String field, @Nullable String value) {
        return require(isDay(value), field, value, "a day such as 2026-03-14");
    }

    private static boolean isDay(@Nullable String text) {
        try {
            return text != null && LocalDate.parse(text).getYear() >= EARLIEST_YEAR;
        } catch (DateTimeParseException e) {
            return false;
        }
    }

    public void add(FieldProblem problem) {
        problems.add(problem);
    }

    /** Takes over the problems of a part, each prefixed with the path of that part. */
    public void addUnder(String prefix, List<FieldProblem> inner) {
        inner.forEach(p -> problems.add(p.under(prefix)));
    }

    /** As {@link #addUnder(String, List)} for a part of a list, such as {@code points[3]}. */
    public void addUnder(String list, int index, List<FieldProblem> inner) {
        if (!inner.isEmpty()) {
            addUnder(list + "[" + index + "]", inner);
        }
    }

    public boolean isClean() {
        return problems.isEmpty();
    }

    public List<FieldProblem> problems() {
        return List.copyOf(problems);
    }

    /** @throws InvalidInputException with every problem, if there is any */
    public void throwIfAny() {
        if (!problems.isEmpty()) {
            throw new InvalidInputException(problems);
        }
    }

    private static String text(@Nullable Object value) {
        if (value == null) {
            return "missing";
        }
        return value instanceof Double d ? plain(d, "") : abbreviate(value.toString());
    }

    private static String abbreviate(@Nullable String given) {
        if (given == null) {
            return "missing";
        }
        String value = ReadableText.withMarks(given);
        return value.length() <= 80 ? value : value.substring(0, 77) + "…";
    }

    private static String plain(double number, String unit) {
        String digits = number == Math.rint(number) && Math.abs(number) < 1e15
                ? Long.toString((long) number)
                : Double.toString(number);
        return unit.isEmpty() ? digits : digits + " " + unit;
    }
}
