package org.vanewright.catalogue;

import java.text.Normalizer;
import java.util.Comparator;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * One value of a facet, such as a chord from 1200 to under 1500 mm.
 *
 * @param facet it belongs to
 * @param choice as in addresses: lower-case ASCII letters, digits and hyphens, at most 80
 * @param label as people read it
 * @param place among the values of its facet; those of the same place stand in the order of their labels
 */
public record FacetValue(Facet facet, String choice, String label, int place) implements Comparable<FacetValue> {
    private static final int LONGEST = 80;
    private static final Pattern CHOICE = Pattern.compile("[a-z0-9][a-z0-9-]{0,79}");
    private static final Comparator<FacetValue> ORDER = Comparator.comparing(FacetValue::facet)
            .thenComparing(FacetValue::place)
            .thenComparing(FacetValue::label)
            .thenComparing(FacetValue::choice);

    public FacetValue {
        if (!isChoice(choice)) {
            throw new IllegalArgumentException("not a choice: " + choice);
        }
    }

    /** Of a fixed list of values. */
    public static FacetValue of(Facet facet, Enum<?> constant, String label) {
        String choice = constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
        return new FacetValue(facet, choice, label, constant.ordinal());
    }

    /** Of values that nobody can list beforehand: the choice is made of the label. */
    public static FacetValue named(Facet facet, String label) {
        String ascii = Normalizer.normalize(label, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        String cut = ascii.length() > LONGEST ? ascii.substring(0, LONGEST) : ascii;
        return new FacetValue(facet, cut.isEmpty() ? "other" : cut, label, 0);
    }

    /** Whether a facet could have that value. */
    public static boolean isChoice(String text) {
        return CHOICE.matcher(text).matches();
    }

    /** As in addresses, such as {@code chord:1200-1500}. */
    public String key() {
        return facet.key() + ":" + choice;
    }

    @Override
    public int compareTo(FacetValue other) {
        return ORDER.compare(this, other);
    }
}
