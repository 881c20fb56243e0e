package org.vanewright.engineering.inference;

import org.hipparchus.distribution.continuous.TDistribution;

/** Student's t distribution as comparisons use it. */
public final class StudentT {
    private static final double ACCURACY = 1e-12;

    private StudentT() {}

    /** The t that is exceeded to either side with probability 1 − confidence in all. */
    public static double twoSided(double confidence, double degreesOfFreedom) {
        double tail = (1 - confidence) / 2;
        // the lower tail keeps its digits where confidence is next to 1
        return -new TDistribution(degreesOfFreedom, ACCURACY).inverseCumulativeProbability(tail);
    }

    /** Probability of a t at least as far from 0, to either side. */
    public static double twoSidedProbability(double t, double degreesOfFreedom) {
        return Math.min(1, 2 * new TDistribution(degreesOfFreedom).cumulativeProbability(-Math.abs(t)));
    }
}
