package org.vanewright.engineering.inference;

import java.util.stream.DoubleStream;
import org.apache.commons.numbers.gamma.Erfc;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Non-central t distribution: of (Z + δ)/S with Z standard normal and ν S² a chi-squared variable of ν degrees of freedom,
 *
 * <pre>
 * P(T ≤ t) = ∫₀^∞ Φ(t s − δ) f(s) ds,      f(s) ∝ s^(ν−1) exp(−ν s²/2)
 * </pre>
 *
 * by Gauss-Legendre quadrature on pieces that end at the step of Φ and about the peak of f; the same quadrature norms f, so
 * no gamma function of a large argument is needed and any ν works. Agrees with published tables to all their digits.
 *
 * <p>Definition: N. L. Johnson, S. Kotz, N. Balakrishnan, Continuous Univariate Distributions, vol. 2, 2nd edition, 1995,
 * chapter 31 (from memory).
 */
public final class NoncentralT {
    private static final int POINTS = 40;
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(POINTS);
    /** exp(−12²/4) is next to nothing. */
    private static final double REACH = 12;
    /** Towards 0 the pieces shrink by this, for s^(ν−1) is not smooth there. */
    private static final double SHRINK = 8;

    private static final int SHRINKINGS = 7;

    private NoncentralT() {}

    /**
     * P(T ≤ t).
     *
     * @param degreesOfFreedom at least 1
     * @param noncentrality δ, finite
     */
    public static double cumulative(double t, double degreesOfFreedom, double noncentrality) {
        double peak = Math.sqrt((degreesOfFreedom - 1) / degreesOfFreedom);
        double width = 1 / Math.sqrt(2 * degreesOfFreedom);
        double low = Math.max(0, peak - REACH * width);
        double high = peak + REACH * width;
        double below = 0;
        double all = 0;
        double[] ends = ends(t, noncentrality, peak, width, low, high);
        for (int i = 1; i < ends.length; i++) {
            double half = (ends[i] - ends[i - 1]) / 2;
            double middle = ends[i - 1] + half;
            for (int k = 0; k < POINTS; k++) {
                double s = middle + half * RULE.getPoint(k);
                double weight = half * RULE.getWeight(k) * density(s, peak, degreesOfFreedom);
                below += weight * normal(t * s - noncentrality);
                all += weight;
            }
        }
        return below / all;
    }

    private static double[] ends(double t, double noncentrality, double peak, double width, double low, double high) {
        double step = noncentrality / t;
        double narrow = 1 / Math.abs(t);
        DoubleStream small =
                DoubleStream.iterate(peak / SHRINK, s -> s / SHRINK).limit(low > 0 ? 0 : SHRINKINGS);
        DoubleStream others = DoubleStream.of(
                low,
                peak - 4 * width,
                peak,
                peak + 4 * width,
                high,
                step - 8 * narrow,
                step - 2 * narrow,
                step,
                step + 2 * narrow,
                step + 8 * narrow);
        return DoubleStream.concat(small, others)
                .filter(s -> s >= low && s <= high)
                .sorted()
                .distinct()
                .toArray();
    }

    /** f(s) over its value at the peak; for one degree of freedom the peak is at 0. */
    private static double density(double s, double peak, double degreesOfFreedom) {
        double away = s - peak;
        double power = peak > 0 ? (degreesOfFreedom - 1) * Math.log1p(away / peak) : 0;
        return Math.exp(power - degreesOfFreedom * away * (s + peak) / 2);
    }

    private static double normal(double z) {
        return Erfc.value(-z / Math.sqrt(2)) / 2;
    }
}
