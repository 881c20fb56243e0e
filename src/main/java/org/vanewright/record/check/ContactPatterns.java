package org.vanewright.record.check;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * How e-mail addresses and phone numbers are usually written (common practice, no source; lengths of international
 * numbers by ITU-T E.164: at most fifteen digits).
 */
final class ContactPatterns {
    /** Also with "at" and "dot" in brackets, as people write to hide it from machines. */
    static final Pattern EMAIL = Pattern.compile(
            "(?<![\\w.%+-])[\\w%+-]{1,40}+(?:\\.[\\w%+-]{1,40}+){0,4}"
                    + "(?:@|\\s{0,2}[\\[({]\\s?at\\s?[\\])}]\\s{0,2})"
                    + "(?:[A-Za-z0-9-]{1,60}+(?:\\.|\\s{0,2}[\\[({]\\s?dot\\s?[\\])}]\\s{0,2})){1,5}[A-Za-z]{2,20}(?![\\w-])",
            Pattern.CASE_INSENSITIVE);

    private static final String GAP = "[ \\u00A0./-]{1,3}";
    private static final String INTERNATIONAL = "(?:\\+|\\b00)[1-9]\\d{0,2}(?:" + GAP
            + ")?(?:\\(0?\\d{1,4}\\)|\\d{1,5})" + "(?:(?:" + GAP + ")?\\d{2,5}){1,4}";
    private static final String TRUNK_ZERO = "\\(?0[1-9]\\d{1,4}\\)?(?:" + GAP + "\\d{2,8}){1,4}";
    private static final String BRACKETED = "\\([2-9]\\d{2}\\) ?\\d{3}[ .-]\\d{4}";
    private static final String NORTH_AMERICAN = "(?:1[.-])?[2-9]\\d{2}([.-])\\d{3}\\1\\d{4}";
    private static final String LABELLED =
            "(?i:tel(?:ephone)?|phone|mobile|cell|whatsapp|fax|sms)(?i:\\.? ?(?:no\\.?|number))?[.:]{0,2} {0,2}\\(?\\+?\\d(?:[ ()./-]{0,3}\\d){5,14}";

    static final Pattern PHONE = Pattern.compile("(?<![\\w.,/+-])(?:" + NORTH_AMERICAN + "|" + LABELLED + "|"
            + BRACKETED + "|" + INTERNATIONAL + "|" + TRUNK_ZERO + ")(?![\\w]|[.,/-]\\d)");

    private static final Pattern LABEL = Pattern.compile("[A-Za-z].*", Pattern.DOTALL);
    private static final Pattern DECIMAL = Pattern.compile("\\+?\\d+[.]\\d+");
    private static final Pattern DATE = Pattern.compile("\\d{1,2}[./-]\\d{1,2}[./-](?:19|20)\\d{2}.*", Pattern.DOTALL);

    /** What stands before a number that is no phone number. */
    private static final Pattern OTHER_NUMBER = Pattern.compile(
            "(?i)(?:p/?n|s/?n|part|serial|isbn(?:-1[03])?|issn|doi|drawing|dwg|order|item|ref|type|model|stock|nsn|no|nr)[.:# ]{0,3}$");

    private ContactPatterns() {}

    /** Whether what {@link #PHONE} found has the length of a phone number and is nothing else. */
    static boolean isPhone(String text, MatchResult found) {
        String number = found.group();
        long digits = number.chars().filter(Character::isDigit).count();
        if (LABEL.matcher(number).matches()) {
            return digits <= 15;
        }
        String before = text.substring(Math.max(0, found.start() - 16), found.start());
        return digits >= 8
                && digits <= 15
                && !DECIMAL.matcher(number).matches()
                && !DATE.matcher(number).matches()
                && !OTHER_NUMBER.matcher(before).find();
    }
}
