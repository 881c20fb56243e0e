package org.vanewright.engineering.inference;

import java.util.Locale;

/**
 * What a comparison allows to be said, and nothing else. Never that a change is good, safe or approved.
 *
 * @param changeSeen whether the p-value, adjusted where several were compared, is below one less the confidence
 * @param words such as "lower by 1.8 kt (95 % interval 0.9 to 2.7, 8 and 8 stalls)"
 * @param basis the numbers behind the words
 */
public record Claim(boolean changeSeen, String words, String basis) {
    private static final int MOST_EXTRA_DIGITS = 3;

    /**
     * @param unit of the values, such as {@code kt}
     * @param points what was flown, in the plural, such as {@code stalls}
     */
    public static Claim of(Comparison comparison, String unit, String points) {
        return of(comparison, comparison.pValue(), 1, unit, points);
    }

    /**
     * One of several configurations.
     *
     * @param together how many were compared with the baseline
     */
    public static Claim of(Holm.Adjusted adjusted, int together, String unit, String points) {
        return of(adjusted.comparison(), adjusted.adjustedPValue(), together, unit, points);
    }

    private static Claim of(Comparison c, double pValue, int together, String unit, String points) {
        boolean seen = pValue < 1 - c.confidence();
        return new Claim(seen, seen ? change(c, unit, points) : noChange(c, unit), basis(c, pValue, together, unit));
    }

    private static String change(Comparison c, String unit, String points) {
        boolean lower = c.difference() < 0;
        double near = lower ? -c.interval().high() : c.interval().low();
        double far = lower ? -c.interval().low() : c.interval().high();
        int decimals = decimalsOf(c, near);
        return String.format(
                Locale.ROOT,
                "%s by %s %s (%s %% interval %s to %s, %d and %d %s)",
                lower ? "lower" : "higher",
                Rounding.text(Math.abs(c.difference()), decimals),
                unit,
                percent(c.confidence()),
                Rounding.text(near, decimals),
                Rounding.text(far, decimals),
                c.baselineCount(),
                c.modifiedCount(),
                points);
    }

    /** An interval that excludes 0 must not be rounded to one that ends there. */
    private static int decimalsOf(Comparison c, double near) {
        int decimals = Rounding.decimals(c.interval().halfWidth());
        int most = decimals + MOST_EXTRA_DIGITS;
        while (decimals < most && near > 0 && near < 0.5 * Math.pow(10, -decimals)) {
            decimals++;
        }
        return decimals;
    }

    private static String noChange(Comparison c, String unit) {
        double missed = c.smallestVisibleChange(Comparison.USUAL_POWER);
        return String.format(
                Locale.ROOT,
                "no change seen; a change under %s %s would have been missed",
                Rounding.text(missed, Rounding.decimals(missed)),
                unit);
    }

    private static String basis(Comparison c, double pValue, int together, String unit) {
        int decimals = Rounding.decimals(c.interval().halfWidth());
        String difference = String.format(
                Locale.ROOT,
                "Difference %s %s, %s %% interval %s to %s, p %s",
                Rounding.text(c.difference(), decimals),
                unit,
                percent(c.confidence()),
                Rounding.text(c.interval().low(), decimals),
                Rounding.text(c.interval().high(), decimals),
                probability(pValue));
        String corrected =
                together > 1 ? String.format(Locale.ROOT, " after Holm's correction for %d comparisons", together) : "";
        return difference + corrected + "; missed means seen with a chance below 80 %.";
    }

    static String probability(double p) {
        return p < 0.001 ? "below 0.001" : Rounding.text(p, p < 0.1 ? 3 : 2);
    }

    private static String percent(double confidence) {
        String text = Rounding.text(100 * confidence, 2);
        return text.contains(".") ? text.replaceFirst("\\.?0+$", "") : text;
    }
}
