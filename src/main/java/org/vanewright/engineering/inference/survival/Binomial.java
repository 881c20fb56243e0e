package org.vanewright.engineering.inference.survival;

import org.hipparchus.distribution.continuous.BetaDistribution;
import org.vanewright.engineering.inference.Interval;

/** Limits of a proportion counted on things that fail independently of one another. */
public final class Binomial {
    private Binomial() {}

    /**
     * The exact two-sided interval of C. J. Clopper and E. S. Pearson, Biometrika 26, 1934 (from memory), by quantiles of
     * the beta distribution; NIST/SEMATECH e-Handbook, 7.2.4.1.
     *
     * @param counted 0 to {@code of}
     * @param of at least 1
     */
    public static Interval clopperPearson(int counted, int of, double confidence) {
        if (of < 1 || counted < 0 || counted > of) {
            throw new IllegalArgumentException(counted + " of " + of);
        }
        double tail = (1 - confidence) / 2;
        double low =
                counted == 0 ? 0 : new BetaDistribution(counted, of - counted + 1.0).inverseCumulativeProbability(tail);
        double high = counted == of
                ? 1
                : new BetaDistribution(counted + 1.0, of - counted).inverseCumulativeProbability(1 - tail);
        return new Interval(low, high);
    }

    /**
     * The highest proportion that a count of none still allows, one-sided: 1 − (1 − confidence)^(1/n). J. A. Hanley and A.
     * Lippman-Hand, If Nothing Goes Wrong, Is Everything All Right?, JAMA 249, 1983 (from memory).
     */
    public static double upperLimitOfNone(int of, double confidence) {
        if (of < 1) {
            throw new IllegalArgumentException("none of " + of);
        }
        return -Math.expm1(Math.log1p(-confidence) / of);
    }

    /** The same at 95 % as a rule of thumb, 3/n and never above 1; same source. */
    public static double ruleOfThree(int of) {
        return Math.min(1, 3.0 / of);
    }
}
