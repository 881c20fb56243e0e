package org.vanewright.record;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Makes the identity of a record, as it stands in its address, from a name. */
final class Slugs {
    /** Leaves room for a number behind it in the column. */
    private static final int LONGEST = 60;

    /** Words that stand in the same place of an address as a slug. */
    private static final Set<String> TAKEN =
            Set.of("new", "drafts", "edit", "preview", "compare", "search", "revisions", "import");

    private static final Pattern SLUG = Pattern.compile("[a-z0-9-]{1,80}");

    private Slugs() {}

    /**
     * The {@code attempt}-th candidate, counting from 1: lower-case ASCII letters and digits with single hyphens; from
     * the second on with {@code -2}, {@code -3} behind it.
     *
     * @param name what people call the record
     * @param kind used where nothing of the name can be written in ASCII
     */
    static String candidate(String name, String kind, int attempt) {
        String stem = stem(name);
        if (stem.isEmpty()) {
            stem = kind;
        }
        int number = TAKEN.contains(stem) ? attempt + 1 : attempt;
        return number == 1 ? stem : stem + "-" + number;
    }

    /** Whether another word of an address stands where it would. */
    static boolean isTaken(String slug) {
        return TAKEN.contains(slug);
    }

    /** Whether a record could have it; what a caller sends may be anything. */
    static boolean isSlug(String text) {
        return SLUG.matcher(text).matches();
    }

    private static String stem(String name) {
        String ascii = Normalizer.normalize(name, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT)
                .replace("ß", "ss")
                .replaceAll("[^a-z0-9]+", "-");
        String cut = ascii.length() > LONGEST ? ascii.substring(0, LONGEST) : ascii;
        return cut.replaceAll("^-+|-+$", "");
    }
}
