package org.vanewright.bench.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Numbers;

/**
 * Numbers typed in lines.
 *
 * @param path of the field
 * @param lines those with anything in them
 */
record NumberLines(String path, List<Line> lines) {
    static final int LONGEST = 40_000;
    private static final int LONGEST_SHOWN = 40;

    /**
     * One line.
     *
     * @param place its number, from 1
     * @param text as typed
     * @param numbers in it
     */
    record Line(int place, String text, List<Double> numbers) {
        /** The number at that place; null where the line ends before. */
        @Nullable
        Double at(int index) {
            return index < numbers.size() ? numbers.get(index) : null;
        }
    }

    /**
     * Reads a field whose every line holds from {@code least} to {@code most} numbers, parted by blanks, semicolons or a
     * comma and a blank. What cannot be read is noted in the form with its line.
     *
     * @param what a line holds, such as "a ground speed and a direction"
     */
    static NumberLines read(Form form, String path, int least, int most, String what) {
        List<Line> lines = new ArrayList<>();
        String typed = form.value(path);
        if (typed.isBlank()) {
            form.refuse(new FieldProblem(path, "missing", "lines with " + what + " each"));
        } else if (typed.length() > LONGEST) {
            form.refuse(new FieldProblem(path, typed.length() + " characters", "at most " + LONGEST + " characters"));
        } else {
            String[] rows = typed.split("\\R", -1);
            for (int i = 0; i < rows.length; i++) {
                String row = rows[i].strip();
                if (!row.isEmpty()) {
                    line(form, path, i + 1, row, least, most, what).ifPresent(lines::add);
                }
            }
        }
        return new NumberLines(path, List.copyOf(lines));
    }

    private static Optional<Line> line(
            Form form, String path, int place, String row, int least, int most, String what) {
        List<Double> numbers = new ArrayList<>();
        boolean read = true;
        for (String word : row.split("[\\s;]+", -1)) {
            Optional<Double> number = Numbers.parse(word.replaceFirst(",$", ""));
            number.ifPresent(numbers::add);
            read = read && number.isPresent();
        }
        if (!read || numbers.size() < least || numbers.size() > most) {
            form.refuse(new FieldProblem(path, shown(row), "line " + place + ": must be " + what));
            return Optional.empty();
        }
        return Optional.of(new Line(place, row, List.copyOf(numbers)));
    }

    /** All numbers, line after line. */
    List<@Nullable Double> all() {
        List<@Nullable Double> all = new ArrayList<>();
        lines.forEach(line -> all.addAll(line.numbers()));
        return all;
    }

    /**
     * Calculates; where the calculation names an entry of {@code list}, whose entries are the lines, the problem gets the
     * line it stands in.
     */
    <T> T placed(String list, Supplier<T> calculation) {
        try {
            return calculation.get();
        } catch (InvalidInputException e) {
            Pattern entry = Pattern.compile(Pattern.quote(list) + "\\[(\\d+)].*");
            throw new InvalidInputException(
                    e.problems().stream().map(p -> placed(p, list, entry)).toList());
        }
    }

    private FieldProblem placed(FieldProblem problem, String list, Pattern entry) {
        Matcher matcher = entry.matcher(problem.field());
        if (problem.field().equals(list)) {
            return new FieldProblem(path, problem.value(), problem.allowed());
        }
        if (!matcher.matches()) {
            return problem;
        }
        Line line = lines.get(Integer.parseInt(matcher.group(1)));
        return new FieldProblem(
                path,
                shown(line.text()),
                "line " + line.place() + ": " + problem.value() + " must be " + problem.allowed());
    }

    private static String shown(String text) {
        return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN - 1) + "…";
    }
}
