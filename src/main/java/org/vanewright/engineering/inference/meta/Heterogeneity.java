package org.vanewright.engineering.inference.meta;

import java.util.List;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.vanewright.engineering.inference.Interval;

/**
 * By how much studies differ beyond their own uncertainty.
 *
 * @param q Cochran's Q = Σ w (y − ȳ_w)², w = 1/v. W. G. Cochran, The Combination of Estimates from Different Experiments,
 *     Biometrics 10, 1954 (from memory)
 * @param degreesOfFreedom k − 1
 * @param pValue of a Q at least as large if all studies had one true effect
 * @param iSquared share of the scatter that is not the studies' own uncertainty, max(0, (Q − (k − 1))/Q), 0 to 1. J. P. T.
 *     Higgins, S. G. Thompson, Quantifying Heterogeneity in a Meta-Analysis, Statistics in Medicine 21, 2002 (from memory)
 * @param tauSquared variance of true effects between studies
 * @param tauSquaredInterval of it, by the Q-profile: all τ² for which Σ w(τ²) (y − μ)² is between the quantiles of χ² with k
 *     − 1 degrees of freedom. W. Viechtbauer, Confidence Intervals for the Amount of Heterogeneity in Meta-Analysis,
 *     Statistics in Medicine 26, 2007 (from memory). It can end below {@code tauSquared}
 */
public record Heterogeneity(
        double q,
        int degreesOfFreedom,
        double pValue,
        double iSquared,
        double tauSquared,
        Interval tauSquaredInterval) {
    private static final int MOST_STEPS = 500;
    private static final double RELATIVE = 1e-12;

    static Heterogeneity of(List<Effect> effects, TauEstimator estimator, double confidence) {
        int freedom = effects.size() - 1;
        double q = Weighted.at(0, effects).q();
        ChiSquaredDistribution chi = new ChiSquaredDistribution(freedom);
        double tail = (1 - confidence) / 2;
        Interval profile = new Interval(
                whereQIs(chi.inverseCumulativeProbability(1 - tail), effects),
                whereQIs(chi.inverseCumulativeProbability(tail), effects));
        double share = q > 0 ? Math.max(0, (q - freedom) / q) : 0;
        return new Heterogeneity(
                q, freedom, 1 - chi.cumulativeProbability(q), share, estimator.estimate(effects), profile);
    }

    /** Standard deviation of true effects between studies. */
    public double tau() {
        return Math.sqrt(tauSquared);
    }

    /** Q falls as τ² grows; 0 where it is lower from the start. */
    private static double whereQIs(double wanted, List<Effect> effects) {
        if (Weighted.at(0, effects).q() <= wanted) {
            return 0;
        }
        double high = effects.stream().mapToDouble(Effect::variance).max().orElseThrow();
        while (Weighted.at(high, effects).q() > wanted) {
            high *= 4;
        }
        return new BracketingNthOrderBrentSolver(RELATIVE, high * RELATIVE, 5)
                .solve(MOST_STEPS, t -> Weighted.at(t, effects).q() - wanted, 0, high);
    }
}
