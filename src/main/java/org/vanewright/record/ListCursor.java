package org.vanewright.record;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Base64;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * The last item of a page, as the opaque text that asks for the next one.
 *
 * @param createdAt of that item
 * @param slug of that item; settles the order of items of the same instant
 */
record ListCursor(Instant createdAt, String slug) {
    private static final Pattern SLUG = Pattern.compile("[a-z0-9-]{1,80}");
    private static final Instant LATEST = Instant.parse("9999-01-01T00:00:00Z");

    /** Before whatever is newest. */
    static final ListCursor BEGINNING = new ListCursor(LATEST, "");

    String encode() {
        byte[] plain = (createdAt + " " + slug).getBytes(StandardCharsets.UTF_8);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(plain);
    }

    /** @throws InvalidInputException naming {@code cursor} if the text did not come from {@link #encode} */
    static ListCursor decode(String text) {
        try {
            String plain = new String(Base64.getUrlDecoder().decode(text), StandardCharsets.UTF_8);
            int gap = plain.indexOf(' ');
            if (gap > 0) {
                ListCursor cursor = new ListCursor(Instant.parse(plain.substring(0, gap)), plain.substring(gap + 1));
                if (cursor.isPlausible() && cursor.encode().equals(text)) {
                    return cursor;
                }
            }
        } catch (IllegalArgumentException | DateTimeException e) {
            throw refused(text, e);
        }
        throw refused(text, null);
    }

    /** A database refuses to compare with a NUL, or with a time that it cannot hold. */
    private boolean isPlausible() {
        return SLUG.matcher(slug).matches() && createdAt.isAfter(Instant.EPOCH) && createdAt.isBefore(LATEST);
    }

    private static InvalidInputException refused(String text, @Nullable Exception cause) {
        String shown = text.length() <= 80 ? text : text.substring(0, 77) + "…";
        var refusal = new InvalidInputException(
                new FieldProblem("cursor", shown, "the nextCursor of an earlier page, unchanged"));
        if (cause != null) {
            refusal.addSuppressed(cause);
        }
        return refusal;
    }
}
