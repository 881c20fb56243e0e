package org.vanewright.engineering.inference;

import org.jspecify.annotations.Nullable;

/**
 * A difference over the mean of the baseline, both of which are uncertain. By Fieller's theorem the ratio r = d/b has as its
 * interval all values for which d − r b is within its own uncertainty of 0:
 *
 * <pre>
 * (d − r b)² ≤ t² (V_dd − 2 r V_db + r² V_bb)
 * </pre>
 *
 * with t of the difference's degrees of freedom. E. C. Fieller, Some Problems in Interval Estimation, Journal of the Royal
 * Statistical Society B 16, 1954, pages 175 to 185 (from memory). Exact for normal values with a common estimate of
 * variance, good else.
 *
 * @param ratio d/b
 * @param interval of the ratio
 * @param standardError of the ratio to first order, √(V_dd − 2 r V_db + r² V_bb)/|b|
 */
public record RelativeChange(double ratio, Interval interval, double standardError) {
    /**
     * @param comparison of the modified configuration with the baseline, whose difference d is
     * @param baselineMean b
     * @param baselineError standard error of b
     * @return null where b cannot be told from 0, so that the ratio has no bounds
     */
    public static @Nullable RelativeChange of(Comparison comparison, double baselineMean, double baselineError) {
        double d = comparison.difference();
        double variance = comparison.standardError() * comparison.standardError();
        double baseline = baselineError * baselineError;
        double t = StudentT.twoSided(comparison.confidence(), comparison.degreesOfFreedom());
        double leading = baselineMean * baselineMean - t * t * baseline;
        if (!(leading > 0)) {
            return null;
        }
        double shared = covariance(comparison.design(), variance, baseline);
        double middle = d * baselineMean - t * t * shared;
        double last = d * d - t * t * variance;
        double root = Math.sqrt(Math.max(0, middle * middle - leading * last));
        double ratio = d / baselineMean;
        double firstOrder = Math.max(0, variance - 2 * ratio * shared + ratio * ratio * baseline);
        return new RelativeChange(
                ratio,
                new Interval((middle - root) / leading, (middle + root) / leading),
                Math.sqrt(firstOrder) / Math.abs(baselineMean));
    }

    /**
     * Of the difference and the baseline's mean. Independent values: d = m − b, so −V_bb. Within blocks only the rest S²
     * beside blocks and configurations stands in both: V_dd = 2 S²/n, so −S²/n = −V_dd/2.
     */
    private static double covariance(Comparison.Design design, double variance, double baseline) {
        return design == Comparison.Design.INDEPENDENT ? -baseline : -variance / 2;
    }
}
