package org.vanewright.engineering.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.FieldProblem;

/**
 * One line of a coordinate file.
 *
 * @param number counted from 1
 * @param text without comment and outer blanks
 */
record CoordinateLine(int number, String text) {
    private static final int SHOWN = 60;
    private static final Pattern SEPARATOR = Pattern.compile("\\s*[,;]\\s*|\\s+");
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]{1,3})?");
    private static final Pattern NO_NUMBER = Pattern.compile("(?i)[+-]?(?:nan|inf|infinity)");
    private static final double LARGEST = 1e6;

    /** Every line of a text; comments start with {@code #}. */
    static List<CoordinateLine> of(String text) {
        List<CoordinateLine> lines = new ArrayList<>();
        int number = 1;
        for (String line : text.split("\r\n|\r|\n", -1)) {
            int comment = line.indexOf('#');
            String content = (comment < 0 ? line : line.substring(0, comment)).strip();
            // a line of comment alone is no blank line: it parts no lists
            if (comment < 0 || !content.isEmpty()) {
                lines.add(new CoordinateLine(number, content));
            }
            number++;
        }
        return lines;
    }

    boolean isBlank() {
        return text.isEmpty();
    }

    /** The two numbers on this line; null where it holds anything else. */
    @Nullable
    Point2 point() {
        String[] parts = SEPARATOR.split(text, -1);
        if (parts.length != 2 || !isNumber(parts[0]) || !isNumber(parts[1])) {
            return null;
        }
        double x = Double.parseDouble(parts[0]);
        double y = Double.parseDouble(parts[1]);
        return Math.abs(x) <= LARGEST && Math.abs(y) <= LARGEST ? new Point2(x + 0.0, y + 0.0) : null;
    }

    /** True for two or more items that are all numbers or the words for none, so that a spoilt point is no title. */
    boolean meantAsPoint() {
        String[] parts = SEPARATOR.split(text, -1);
        return parts.length > 1
                && Arrays.stream(parts)
                        .allMatch(p -> isNumber(p) || NO_NUMBER.matcher(p).matches());
    }

    FieldProblem problem(String reason) {
        return new FieldProblem(CoordinateFile.FIELD, shown(), "line " + number + ": " + reason);
    }

    /** What is wrong with a line that should hold a point. */
    FieldProblem notAPoint() {
        String[] parts = SEPARATOR.split(text, -1);
        if (parts.length != 2) {
            return problem("two numbers, x and y, with decimal points, are wanted; this line holds " + parts.length
                    + (parts.length == 1 ? " item" : " items"));
        }
        String odd = isNumber(parts[0]) ? parts[1] : parts[0];
        String reason = isNumber(odd) ? " is beyond any chord" : " is not a number";
        return problem("two numbers, x and y, are wanted; \"" + abbreviated(odd, 20) + "\"" + reason);
    }

    private String shown() {
        return abbreviated(text, SHOWN);
    }

    /** Shortened, and without characters that a page or a log cannot show. */
    static String abbreviated(String text, int longest) {
        String clean = text.replaceAll("[\\p{Cntrl}\\p{Cf}]+", " ");
        if (clean.length() <= longest) {
            return clean;
        }
        int end = Character.isHighSurrogate(clean.charAt(longest - 2)) ? longest - 2 : longest - 1;
        return clean.substring(0, end) + "…";
    }

    private static boolean isNumber(String part) {
        return NUMBER.matcher(part).matches();
    }
}
