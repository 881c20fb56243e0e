package org.vanewright.engineering.inference;

import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * Chance that a two-sided t test sees a true change: 1 − F(t*; ν, δ) + F(−t*; ν, δ), with F the non-central t distribution
 * and δ the change over its standard error.
 *
 * <p>J. Cohen, Statistical Power Analysis for the Behavioral Sciences, 2nd edition, 1988, chapter 2 (from memory).
 */
public final class Power {
    private static final int EVALUATIONS = 200;

    private Power() {}

    /**
     * @param changeInErrors true change over the standard error of the difference
     * @param significance of the two-sided test, between 0 and 1
     */
    public static double of(double changeInErrors, double degreesOfFreedom, double significance) {
        double critical = StudentT.twoSided(1 - significance, degreesOfFreedom);
        return beyond(critical, changeInErrors, degreesOfFreedom);
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
