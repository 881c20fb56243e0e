package org.vanewright.platform;

import java.util.regex.Pattern;

/** Text for cells of comma-separated files. */
public final class CsvCells {
    private static final Pattern FORMULA = Pattern.compile("[=+\\-@\\t\\r\\n\\uFF1D\\uFF0B\\uFF0D\\uFF20]");
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d{1,3})?");

    private CsvCells() {}

    /**
     * The text, with an apostrophe in front where a spreadsheet would take it for a formula: it begins with one of
     * {@code = + - @}, their full-width forms, a tab or an end of line, perhaps after blanks. Numbers stay numbers.
     */
    public static String defuse(String text) {
        String shown = text.strip();
        boolean formula = startsFormula(text) || startsFormula(shown);
        return formula && !NUMBER.matcher(text).matches() ? "'" + text : text;
    }

    private static boolean startsFormula(String text) {
        return !text.isEmpty() && FORMULA.matcher(text.substring(0, 1)).matches();
    }
}
