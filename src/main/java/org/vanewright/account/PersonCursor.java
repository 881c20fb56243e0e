package org.vanewright.account;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Base64;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/** The last person of a page, as the opaque text that asks for the next one. */
record PersonCursor(String name, String id) {
    private static final Pattern ID = Pattern.compile("[0-9a-f-]{36}");

    static PersonCursor of(Person person) {
        return new PersonCursor(person.name(), person.id());
    }

    String encode() {
        return Base64.getUrlEncoder().withoutPadding().encodeToString((id + name).getBytes(UTF_8));
    }

    /** @throws InvalidInputException naming {@code cursor} if the text did not come from {@link #encode} */
    static PersonCursor decode(String text) {
        try {
            String plain = new String(Base64.getUrlDecoder().decode(text), UTF_8);
            int end = Math.min(36, plain.length());
            PersonCursor cursor = new PersonCursor(plain.substring(end), plain.substring(0, end));
            if (ID.matcher(cursor.id).matches()
                    && cursor.name.chars().noneMatch(Character::isISOControl)
                    && cursor.encode().equals(text)) {
                return cursor;
            }
        } catch (IllegalArgumentException e) {
            throw refused(text, e);
        }
        throw refused(text, null);
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
