package org.vanewright.engineering.flightlog;

/** Numbers as loggers write them, with a point or a comma, without grouping. */
final class CsvNumbers {
    private static final int LONGEST = 40;

    private CsvNumbers() {}

    /** NaN for what is no finite number. */
    static double read(String text) {
        int length = text.length();
        if (length == 0 || length > LONGEST) {
            return Double.NaN;
        }
        for (int i = 0; i < length; i++) {
            char c = text.charAt(i);
            // Java would read "NaN", "0x1p3" and "1f", too.
            if ((c < '0' || c > '9') && ".,+-eE".indexOf(c) < 0) {
                return Double.NaN;
            }
        }
        try {
            double number = Double.parseDouble(text.indexOf(',') < 0 ? text : text.replace(',', '.'));
            return Double.isInfinite(number) ? Double.NaN : number;
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }
}
