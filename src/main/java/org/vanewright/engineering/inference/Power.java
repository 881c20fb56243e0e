package org.vanewright.engineering.inference;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Chance that a two-sided t test sees a true change: 1 − F(t*; ν, δ) + F(−t*; ν, δ), with F the non-central t distribution
 * and δ the change over its standard error.
 *
 * <p>J. Cohen, Statistical Power Analysis for the Behavioral Sciences, 2nd edition, 1988, chapter 2 (from memory).
 */
public final class Power {
    private static final int EVALUATIONS = 200;

    /** Angles of the share of one sample in both variances; the mean is even about 45°, so half of them do. */
    private static final GaussIntegrator SHARES = new GaussIntegratorFactory().legendre(24, 0, Math.PI / 4);

    private Power() {}

    /**
     * @param changeInErrors true change over the standard error of the difference
     * @param significance of the two-sided test, between 0 and 1
     */
    public static double of(double changeInErrors, double degreesOfFreedom, double significance) {
        double critical = StudentT.twoSided(1 - significance, degreesOfFreedom);
        return beyond(critical, changeInErrors, degreesOfFreedom);
    }

    /**
     * The same for Welch's test of two samples of one size from populations that scatter alike. Their share s₁²/(s₁² + s₂²)
     * = sin²φ follows a beta distribution with (n − 1)/2 twice and is independent of the sum, on which t alone rests; so
     * the power is the mean, over that share, of the chance that a non-central t with 2 n − 2 degrees of freedom passes the
     * critical value for Welch's own number of them, (n − 1)/(sin⁴φ + cos⁴φ). Exact; integrated by Gauss and Legendre.
     * B. L. Welch, The generalization of Student's problem when several different population variances are involved,
     * Biometrika 34, 1947 (from memory), for the test.
     *
     * @param changeInErrors true change over the standard error of the difference, σ √(2/n)
     * @param perGroup n, two or more
     */
    public static double ofWelch(double changeInErrors, int perGroup, double significance) {
        if (perGroup < 2) {
            throw new IllegalArgumentException("scatter needs two values");
        }
        double weights = 0;
        double sum = 0;
        for (int i = 0; i < SHARES.getNumberOfPoints(); i++) {
            double angle = SHARES.getPoint(i);
            double sin2 = Math.pow(Math.sin(angle), 2);
            double weight = SHARES.getWeight(i) * Math.pow(Math.sin(2 * angle), perGroup - 2.0);
            double degrees = (perGroup - 1) / (sin2 * sin2 + (1 - sin2) * (1 - sin2));
            weights += weight;
            sum += weight * beyond(StudentT.twoSided(1 - significance, degrees), changeInErrors, 2.0 * perGroup - 2);
        }
        return sum / weights;
    }

    private static double beyond(double critical, double changeInErrors, double degreesOfFreedom) {
        double power = 1
                - NoncentralT.cumulative(critical, degreesOfFreedom, changeInErrors)
                + NoncentralT.cumulative(-critical, degreesOfFreedom, changeInErrors);
        return Math.min(1, Math.max(0, power));
    }

    /** The change, in standard errors of the difference, that is seen with this power; power above significance. */
    static double visibleChangeInErrors(double degreesOfFreedom, double significance, double power) {
        double critical = StudentT.twoSided(1 - significance, degreesOfFreedom);
        double high = 1;
        while (beyond(critical, high, degreesOfFreedom) < power) {
            high *= 2;
        }
        return new BrentSolver(1e-10).solve(EVALUATIONS, d -> beyond(critical, d, degreesOfFreedom) - power, 0, high);
    }
}
