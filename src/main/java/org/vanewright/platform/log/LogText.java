package org.vanewright.platform.log;

import java.util.Locale;

/** Text as the log shows it. */
final class LogText {
    private static final String TURN_DIRECTION =
            "\u061C\u200E\u200F\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069";

    private LogText() {}

    /**
     * On one line: control characters, ends of lines and paragraphs of any kind, halves of surrogate pairs and characters
     * that turn the direction of what follows are written as their code, such as {@code \u000A}.
     */
    static String escape(String text) {
        if (text.codePoints().allMatch(LogText::isPlain)) {
            return text;
        }
        StringBuilder out = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            if (isPlain(c)) {
                out.appendCodePoint(c);
            } else {
                out.append(String.format(Locale.ROOT, "\\u%04X", c));
            }
        });
        return out.toString();
    }

    private static boolean isPlain(int c) {
        int type = Character.getType(c);
        return type != Character.CONTROL
                && type != Character.LINE_SEPARATOR
                && type != Character.PARAGRAPH_SEPARATOR
                && type != Character.SURROGATE
                && TURN_DIRECTION.indexOf(c) < 0;
    }
}
