package org.vanewright.load;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.vanewright.record.RevisionRef;

/** Names, times and owners of everything invented. Nothing here is a real place. */
final class Invention {
    private static final List<String> FIRST = List.of(
            "Quill", "Bram", "Tarn", "Osel", "Wend", "Harl", "Mosk", "Fenn", "Drov", "Lind", "Cald", "Yarr", "Pell",
            "Sorv", "Ketz", "Ulm", "Brin", "Vass", "Gorm", "Thell", "Ister", "Nam", "Roth", "Elb", "Jask");
    private static final List<String> SECOND = List.of(
            "mere", "stow", "wick", "holt", "den", "brook", "fjell", "moor", "haven", "dale", "strand", "lund", "by",
            "garth", "croft", "ness", "field", "combe", "thorpe", "ley");
    private static final Instant BEGINNING = Instant.parse("2016-01-04T09:00:00Z");
    private static final Duration SPAN = Duration.ofDays(3600);

    private Invention() {}

    /** One of five hundred places. */
    static String place(Chance chance) {
        return chance.of(FIRST) + chance.of(SECOND);
    }

    /** With the number behind it, so that no two records of a kind have one name. */
    static String name(String words, int number) {
        return String.format(Locale.ROOT, "%s %06d", words, number + 1);
    }

    /** The address that the service makes from such a name; each has letters, digits, blanks, commas and hyphens only. */
    static RevisionRef ref(String name) {
        String slug = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        if (slug.length() > 60) {
            throw new IllegalArgumentException("a name too long for its address: " + name);
        }
        return new RevisionRef(slug, 1);
    }

    /** Evenly over ten years, the larger number later, kinds that others name before those others. */
    static Instant publishedAt(int number, int of, int kind) {
        long micros = SPAN.toSeconds() * 1_000_000 / of * number + kind * 1_000L + number % 1000;
        return BEGINNING.plus(Duration.ofNanos(micros * 1000));
    }
}
