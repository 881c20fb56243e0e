package org.vanewright.engineering.vane;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One row beside one recommendation. It decides nothing.
 *
 * @param recommendation what is recommended
 * @param value the row's ratio; null where it has none
 * @param verdict how the two compare
 * @param offBy how far the value is outside, in the units of the ratio, signed; 0 inside; null where there is no value
 */
public record GuidanceCheck(
        Recommendation recommendation,
        @Nullable Double value,
        Verdict verdict,
        @Nullable Double offBy) {
    /** Where a value lies. */
    public enum Verdict {
        INSIDE("inside"),
        BELOW("below"),
        ABOVE("above"),
        NOT_KNOWN("cannot be said");

        private final String label;

        Verdict(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /** Each recommendation that is for such a row, in the order given. */
    public static List<GuidanceCheck> of(List<Recommendation> recommendations, VaneProportions row, boolean pairs) {
        return recommendations.stream()
                .filter(r -> r.arrangement().fits(pairs))
                .map(r -> of(r, row))
                .toList();
    }

    private static GuidanceCheck of(Recommendation recommendation, VaneProportions row) {
        Double value = recommendation.quantity().of(row);
        Double low = recommendation.low();
        Double high = recommendation.high();
        if (value == null) {
            return new GuidanceCheck(recommendation, null, Verdict.NOT_KNOWN, null);
        }
        if (low != null && value < low) {
            return new GuidanceCheck(recommendation, value, Verdict.BELOW, value - low);
        }
        if (high != null && value > high) {
            return new GuidanceCheck(recommendation, value, Verdict.ABOVE, value - high);
        }
        return new GuidanceCheck(recommendation, value, Verdict.INSIDE, 0.0);
    }
}
