package org.vanewright.catalogue.search;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Base64;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a page of results ended.
 *
 * @param weight of the last one, by the order asked for
 * @param publishedAt when it was published
 * @param id settles the order of what was published at the same instant
 */
record SearchCursor(long weight, Instant publishedAt, long id) {
    private static final Pattern PLAIN = Pattern.compile("(-?[0-9]{1,12}) ([0-9]{1,18}) ([0-9]{1,18})");

    String encode() {
        long micros = ChronoUnit.MICROS.between(Instant.EPOCH, publishedAt);
        String plain = weight + " " + micros + " " + id;
        return Base64.getUrlEncoder().withoutPadding().encodeToString(plain.getBytes(StandardCharsets.UTF_8));
    }

    /** Empty if the text did not come from {@link #encode}. */
    static Optional<SearchCursor> decode(String text) {
        try {
            byte[] plain = Base64.getUrlDecoder().decode(text);
            Matcher parts = PLAIN.matcher(new String(plain, StandardCharsets.UTF_8));
            if (!parts.matches()) {
                return Optional.empty();
            }
            Instant at = Instant.EPOCH.plus(Long.parseLong(parts.group(2)), ChronoUnit.MICROS);
            return Optional.of(new SearchCursor(Long.parseLong(parts.group(1)), at, Long.parseLong(parts.group(3))))
                    .filter(cursor -> cursor.encode().equals(text))
                    .filter(cursor -> cursor.publishedAt.isBefore(Instant.parse("9999-01-01T00:00:00Z")));
        } catch (IllegalArgumentException | DateTimeException | ArithmeticException e) {
            return Optional.empty();
        }
    }
}
