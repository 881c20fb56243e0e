package org.vanewright.security;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.springframework.core.io.ClassPathResource;

/**
 * Who gets in where, read from a file of which each line is one call.
 *
 * @param callers names of the columns
 */
record RouteTable(List<String> callers, List<Line> lines) {
    private static final String COMMENT = "#";
    private static final String COLUMNS = "method";
    private static final String OUTSIDE = "+";

    /**
     * One call and what each caller gets.
     *
     * @param outside whether no controller serves it: static files, filters, and what must not be there at all
     * @param call address with subjects in braces
     * @param expected status or {@code sign-in}, in the order of the callers
     * @param body fields of the form, or JSON; may be empty
     */
    record Line(boolean outside, String method, String call, List<String> expected, String body) {
        String path() {
            return call.split("\\?", 2)[0];
        }

        @Override
        public String toString() {
            return method + " " + call + (body.isEmpty() ? "" : " | " + body);
        }
    }

    static RouteTable read(String name) {
        try {
            String text = new ClassPathResource("security/" + name).getContentAsString(StandardCharsets.UTF_8);
            List<String> rows = text.lines()
                    .map(String::strip)
                    .filter(row -> !row.isEmpty() && !row.startsWith(COMMENT))
                    .toList();
            List<String> head = words(rows.get(0));
            if (!head.get(0).equals(COLUMNS)) {
                throw new IllegalStateException(name + " begins with no names of columns");
            }
            List<String> callers = head.subList(2, head.size());
            return new RouteTable(
                    callers,
                    rows.stream().skip(1).map(row -> line(row, callers.size())).toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Line line(String row, int callers) {
        String[] halves = row.split("\\s\\|\\s", 2);
        List<String> words = words(halves[0]);
        if (words.size() != callers + 2) {
            throw new IllegalStateException("not " + callers + " callers: " + row);
        }
        String method = words.get(0);
        return new Line(
                method.startsWith(OUTSIDE),
                method.replace(OUTSIDE, ""),
                words.get(1),
                words.subList(2, words.size()),
                halves.length == 2 ? halves[1].strip() : "");
    }

    private static List<String> words(String row) {
        return Arrays.asList(row.strip().split("\\s+"));
    }
}
