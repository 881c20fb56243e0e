package org.vanewright.engineering.inference.meta;

import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.StudentT;
import org.vanewright.engineering.input.Checks;

/**
 * Several effects under the model y_i = μ + u_i + e_i, with u of variance τ² between studies and e of the studies' own
 * variances v:
 *
 * <pre>
 * μ = Σ w y / Σ w,     w = 1/(v + τ²),     standard error 1/√(Σ w)
 * </pre>
 *
 * The interval is Hartung and Knapp's: standard error √(Σ w (y − μ)² / ((k − 1) Σ w)) and t with k − 1 degrees of freedom,
 * since with few studies the uncertainty of τ² is no small part of it. J. Hartung, G. Knapp, A Refined Method for the
 * Meta-Analysis of Controlled Clinical Trials with Binary Outcome, Statistics in Medicine 20, 2001 (from memory). Where
 * studies happen to agree that error is never taken below 1/√(Σ w): C. Röver, G. Knapp, T. Friede, Hartung-Knapp-Sidik-Jonkman
 * Approach and Its Modification for Random-Effects Meta-Analysis with Few Studies, BMC Medical Research Methodology 15, 2015
 * (from memory).
 *
 * @param estimator of τ²
 * @param count k
 * @param mean μ
 * @param standardError 1/√(Σ w)
 * @param adjustedError Hartung and Knapp's, never below that
 * @param interval of μ, by the adjusted error
 * @param normalInterval of μ by 1/√(Σ w) and the normal distribution, for comparison with other work
 * @param prediction where the true effect of one more like study may lie: μ ± t √(τ² + SE²) with k − 2 degrees of freedom;
 *     null with two studies. J. P. T. Higgins, S. G. Thompson, D. J. Spiegelhalter, A Re-Evaluation of Random-Effects
 *     Meta-Analysis, Journal of the Royal Statistical Society A 172, 2009, equation 12 (from memory)
 * @param fixedMean what it is if all studies had one true effect
 * @param fixedError of that
 * @param heterogeneity between studies
 * @param confidence of all intervals
 */
public record RandomEffects(
        TauEstimator estimator,
        int count,
        double mean,
        double standardError,
        double adjustedError,
        Interval interval,
        Interval normalInterval,
        @Nullable Interval prediction,
        double fixedMean,
        double fixedError,
        Heterogeneity heterogeneity,
        double confidence) {
    private static final double LEAST_ERROR = 1e-9;
    private static final double MOST = 1e9;

    /**
     * @param effects two or more, in one unit
     * @param confidence such as 0.95
     * @throws org.vanewright.engineering.input.InvalidInputException fields {@code effects}, {@code effects[i].value},
     *     {@code effects[i].standardError}, {@code confidence}
     */
    public static RandomEffects of(List<Effect> effects, TauEstimator estimator, double confidence) {
        check(effects, confidence);
        Heterogeneity heterogeneity = Heterogeneity.of(effects, estimator, confidence);
        Weighted fixed = Weighted.at(0, effects);
        Weighted at = Weighted.at(heterogeneity.tauSquared(), effects);
        int freedom = effects.size() - 1;
        double error = 1 / Math.sqrt(at.sum());
        double adjusted = error * Math.sqrt(Math.max(1, at.q() / freedom));
        double normal = new NormalDistribution().inverseCumulativeProbability((1 + confidence) / 2);
        return new RandomEffects(
                estimator,
                effects.size(),
                at.mean(),
                error,
                adjusted,
                around(at.mean(), StudentT.twoSided(confidence, freedom) * adjusted),
                around(at.mean(), normal * error),
                prediction(at.mean(), error, heterogeneity.tauSquared(), freedom, confidence),
                fixed.mean(),
                1 / Math.sqrt(fixed.sum()),
                heterogeneity,
                confidence);
    }

    private static @Nullable Interval prediction(
            double mean, double error, double tauSquared, int freedom, double confidence) {
        return freedom < 2
                ? null
                : around(mean, StudentT.twoSided(confidence, freedom - 1.0) * Math.sqrt(tauSquared + error * error));
    }

    private static Interval around(double mean, double reach) {
        return new Interval(mean - reach, mean + reach);
    }

    private static void check(List<Effect> effects, double confidence) {
        Checks checks = new Checks();
        checks.require(effects.size() >= 2, "effects", effects.size() + " effects", "two effects or more");
        checks.range("confidence", confidence, 0.5, 0.9999, "");
        for (int i = 0; i < effects.size(); i++) {
            checks.range("effects[" + i + "].value", effects.get(i).value(), -MOST, MOST, "");
            checks.range("effects[" + i + "].standardError", effects.get(i).standardError(), LEAST_ERROR, MOST, "");
        }
        checks.throwIfAny();
    }
}
