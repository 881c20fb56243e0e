package org.vanewright.engineering.inference;

import org.hipparchus.stat.StatUtils;

/**
 * What is kept of repeated values.
 *
 * @param count of the values, at least 2
 * @param mean arithmetic mean
 * @param standardDeviation with n − 1 in its denominator
 */
public record Sample(int count, double mean, double standardDeviation) {
    /** @param values two or more, finite */
    public static Sample of(double... values) {
        if (values.length < 2) {
            throw new IllegalArgumentException("scatter needs two values");
        }
        double mean = StatUtils.mean(values);
        return new Sample(values.length, mean, Math.sqrt(StatUtils.variance(values, mean)));
    }

    /** Variance of the mean, s²/n. */
    double meanVariance() {
        return standardDeviation * standardDeviation / count;
    }

    public double standardError() {
        return standardDeviation / Math.sqrt(count);
    }

    /** Interval of the mean by Student's t with n − 1 degrees of freedom. */
    public Interval meanInterval(double confidence) {
        double reach = StudentT.twoSided(confidence, count - 1) * standardError();
        return new Interval(mean - reach, mean + reach);
    }
}
