package org.vanewright.audit;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Which entries to look at.
 *
 * @param event exactly that event; null for every one
 * @param words each must stand in the person's name, in the subject or in the network address
 */
public record AuditFilter(@Nullable String event, List<String> words) {
    /** All entries. */
    public static final AuditFilter ALL = new AuditFilter(null, List.of());

    private static final int MOST_WORDS = 6;
    private static final int LONGEST = 100;
    private static final Pattern GAP = Pattern.compile("[\\s\\p{Cntrl}]+");

    public AuditFilter {
        words = List.copyOf(words);
    }

    /** As somebody typed it; words beyond the sixth are left out. */
    public static AuditFilter typed(@Nullable String event, @Nullable String words) {
        String named = event == null ? "" : shortened(GAP.matcher(event).replaceAll(""));
        List<String> each = GAP.splitAsStream(words == null ? "" : words.strip())
                .filter(word -> !word.isEmpty())
                .limit(MOST_WORDS)
                .map(word -> shortened(word).toLowerCase(Locale.ROOT))
                .toList();
        return new AuditFilter(named.isEmpty() ? null : named, each);
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST ? text : text.substring(0, LONGEST);
    }
}
