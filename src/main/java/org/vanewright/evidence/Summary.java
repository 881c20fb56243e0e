package org.vanewright.evidence;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.Rounding;
import org.vanewright.engineering.inference.meta.Effect;
import org.vanewright.engineering.inference.meta.Funnel;
import org.vanewright.engineering.inference.meta.RandomEffects;

/**
 * What comparable campaigns come to.
 *
 * @param effects the numbers
 * @param funnel about their mean
 * @param outside campaigns outside the funnel's lines
 * @param aircraft how many different airframes were flown
 * @param unit of the changes
 * @param quantity in words, such as {@code Stall speed}
 */
public record Summary(RandomEffects effects, Funnel funnel, int outside, int aircraft, String unit, String quantity) {
    private static final double CONFIDENCE = 0.95;

    /** How it is computed. */
    public static final String METHOD =
            "Random effects: each campaign’s change is its own true change plus its scatter, and true changes vary about one"
                    + " mean. One comparison of each campaign counts, the first of its plan. Weights are 1/(v + τ²); the"
                    + " interval of the mean is Hartung and Knapp’s with t of k − 1 degrees of freedom, never narrower than"
                    + " by the weights alone; τ²’s interval is the Q-profile; the range for another campaign is Higgins,"
                    + " Thompson and Spiegelhalter’s with t of k − 2.";

    public static final List<String> SOURCES = List.of(
            "R. DerSimonian, N. Laird, Controlled Clinical Trials 7, 1986 (moments; from memory)",
            "W. Viechtbauer, J. Educational and Behavioral Statistics 30, 2005 (REML); Statistics in Medicine 26, 2007"
                    + " (Q-profile; both from memory)",
            "J. P. T. Higgins, S. G. Thompson, Statistics in Medicine 21, 2002 (I²); with D. J. Spiegelhalter, J. R. Stat. Soc."
                    + " A 172, 2009, equation 12 (prediction; both from memory)",
            "J. Hartung, G. Knapp, Statistics in Medicine 20, 2001; C. Röver, G. Knapp, T. Friede, BMC Medical Research"
                    + " Methodology 15, 2015 (interval; both from memory)",
            "Checked against the R package metafor 3.8-1 on the trials of G. A. Colditz et al., JAMA 271, 1994");

    public static final List<String> VALIDITY = List.of(
            "Campaigns are those that clubs chose to fly and to publish; what found nothing may be missing.",
            "Standard errors of a few flights are themselves uncertain, which makes campaigns seem to differ a little more than"
                    + " they do.",
            "Aircraft, layouts, pilots and air differ within a group: the mean belongs to none of them.",
            "Campaigns with one aircraft, or of one club, are not independent; they are counted as if they were.",
            "It predicts nothing for another aircraft and approves nothing: fly your own baseline and test programme.");

    static Summary of(List<Effect> effects, EvidenceQuery query, int aircraft) {
        RandomEffects summed = RandomEffects.of(effects, query.estimator(), CONFIDENCE);
        Funnel funnel = Funnel.around(summed.mean(), CONFIDENCE);
        return new Summary(
                summed,
                funnel,
                funnel.outside(effects).size(),
                aircraft,
                query.scale().unit(query.quantity()),
                query.quantity().label());
    }

    /** Places behind the point that the mean's uncertainty deserves. */
    public int decimals() {
        return Rounding.decimals(effects.interval().halfWidth());
    }

    /** The mean with its interval, in a sentence. */
    public String sentence() {
        return quantity + ": a mean change of " + signed(effects.mean()) + " " + unit + " (95 % interval "
                + range(effects.interval()) + ") over " + effects.count() + " campaigns with " + aircraft
                + " aircraft."
                + (effects.interval().contains(0) ? " The interval holds no change at all." : "");
    }

    /** How much campaigns differ, in a sentence. */
    public String differences() {
        double tau = effects.heterogeneity().tau();
        Interval square = effects.heterogeneity().tauSquaredInterval();
        int places = Math.max(1, decimals());
        return "True changes differ between campaigns by a standard deviation of " + Rounding.text(tau, places) + " "
                + unit
                + " (95 % interval " + Rounding.text(Math.sqrt(square.low()), places) + " to "
                + Rounding.text(Math.sqrt(square.high()), places) + "); "
                + Rounding.text(100 * effects.heterogeneity().iSquared(), 0)
                + " % of their scatter is not explained by their own uncertainty (I²).";
    }

    /** Where another campaign may come out, in a sentence; null where nothing can be said. */
    public @Nullable String another() {
        Interval prediction = effects.prediction();
        return prediction == null
                ? null
                : "If another campaign were like these, its true change would lie between " + signed(prediction.low())
                        + " and " + signed(prediction.high()) + " " + unit + " nineteen times in twenty.";
    }

    public String signed(double value) {
        String text = Rounding.text(value, decimals());
        return value > 0 && !text.matches("[0.]+") ? "+" + text : text;
    }

    public String range(Interval interval) {
        return signed(interval.low()) + " to " + signed(interval.high());
    }
}
