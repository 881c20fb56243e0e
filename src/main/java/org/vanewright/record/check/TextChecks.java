package org.vanewright.record.check;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import org.vanewright.record.check.TextFinding.Kind;

/** Finds e-mail addresses and phone numbers that a document may hold by accident. It advises; people decide. */
public final class TextChecks {
    private static final int AROUND = 12;
    private static final int LONGEST_EXCERPT = 100;

    private TextChecks() {}

    /** Everything found in all texts of a document, in the order of its fields. */
    public static List<TextFinding> of(Record document) {
        List<TextFinding> found = new ArrayList<>();
        DocumentTexts.forEach(document, (field, text) -> found.addAll(of(field, text)));
        return List.copyOf(found);
    }

    /** Everything found in one text. */
    static List<TextFinding> of(String field, String text) {
        List<TextFinding> found = new ArrayList<>();
        Matcher address = ContactPatterns.EMAIL.matcher(text);
        while (address.find()) {
            found.add(new TextFinding(field, Kind.EMAIL_ADDRESS, excerpt(text, address)));
        }
        Matcher number = ContactPatterns.PHONE.matcher(text);
        while (number.find()) {
            if (ContactPatterns.isPhone(text, number)) {
                found.add(new TextFinding(field, Kind.PHONE_NUMBER, excerpt(text, number)));
            }
        }
        return found;
    }

    private static String excerpt(String text, Matcher at) {
        int from = Math.max(0, at.start() - AROUND);
        int to = Math.min(text.length(), Math.min(at.end() + AROUND, from + LONGEST_EXCERPT));
        String shown = text.substring(from, to).replaceAll("\\s+", " ").strip();
        return (from > 0 ? "…" : "") + shown + (to < text.length() ? "…" : "");
    }
}
