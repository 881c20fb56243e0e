package org.vanewright.engineering.input;

import org.jspecify.annotations.Nullable;

/**
 * Which characters text may hold. Control characters, halves of surrogate pairs and characters that turn the direction
 * of what follows are refused: XML 1.0 (section 2.2) and databases cannot hold the first two, and the last make a name
 * read as another one.
 */
final class ReadableText {
    private static final String TURN_DIRECTION = "\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069";

    private ReadableText() {}

    /** Whether a reader sees anything of it. */
    static boolean shows(String text) {
        return text.codePoints()
                .anyMatch(c -> !Character.isWhitespace(c)
                        && !Character.isSpaceChar(c)
                        && Character.getType(c) != Character.FORMAT
                        && Character.getType(c) != Character.UNASSIGNED);
    }

    /** Whether it stands on one line and has no character that is refused. */
    static boolean isLine(@Nullable String text) {
        return text == null || text.codePoints().allMatch(c -> isReadable(c) && !endsLine(c));
    }

    /** Whether it has no character that is refused; it may have lines and tabs. */
    static boolean isProse(@Nullable String text) {
        return text == null || text.codePoints().allMatch(c -> isReadable(c) || c == '\n' || c == '\r' || c == '\t');
    }

    /** With U+FFFD in the place of each character that is refused, to be shown to the one who sent it. */
    static String withMarks(String text) {
        StringBuilder marked = new StringBuilder();
        text.codePoints().map(c -> isReadable(c) ? c : 0xFFFD).forEach(marked::appendCodePoint);
        return marked.toString();
    }

    private static boolean isReadable(int c) {
        int type = Character.getType(c);
        return type != Character.CONTROL
                && type != Character.SURROGATE
                && (c & 0xFFFE) != 0xFFFE
                && TURN_DIRECTION.indexOf(c) < 0;
    }

    private static boolean endsLine(int c) {
        int type = Character.getType(c);
        return type == Character.LINE_SEPARATOR || type == Character.PARAGRAPH_SEPARATOR;
    }
}
