package org.vanewright.engineering.inference.meta;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.vanewright.engineering.inference.Interval;

/**
 * A funnel plot's lines: where studies of that standard error would lie if they had one true effect and nothing but their own
 * scatter. Gaps on one side may be studies that were not published, or small studies that differ in other ways. J. A. C.
 * Sterne, M. Egger, Funnel Plots for Detecting Bias in Meta-Analysis, Journal of Clinical Epidemiology 54, 2001 (from memory).
 *
 * @param centre effect in the middle
 * @param reach standard normal quantile of the confidence
 */
public record Funnel(double centre, double reach) {
    public static Funnel around(double centre, double confidence) {
        return new Funnel(centre, new NormalDistribution().inverseCumulativeProbability((1 + confidence) / 2));
    }

    /** Pseudo confidence limits at a standard error. */
    public Interval at(double standardError) {
        return new Interval(centre - reach * standardError, centre + reach * standardError);
    }

    /** Those that lie outside. */
    public List<Effect> outside(List<Effect> effects) {
        List<Effect> outside = new ArrayList<>();
        for (Effect effect : effects) {
            if (!at(effect.standardError()).contains(effect.value())) {
                outside.add(effect);
            }
        }
        return List.copyOf(outside);
    }
}
