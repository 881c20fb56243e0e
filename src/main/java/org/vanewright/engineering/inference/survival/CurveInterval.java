package org.vanewright.engineering.inference.survival;

import org.vanewright.engineering.inference.Interval;

/**
 * The scale on which the interval of a survival probability is symmetric. J. D. Kalbfleisch and R. L. Prentice, The
 * Statistical Analysis of Failure Time Data, 2nd ed. 2002, section 1.4 (from memory).
 */
public enum CurveInterval {
    /** S ± z·se, cut at 0 and 1. */
    PLAIN {
        @Override
        Interval around(double survival, double standardError, double quantile) {
            return clipped(survival - quantile * standardError, survival + quantile * standardError);
        }
    },
    /** S·exp(±z·se/S), cut at 1. */
    LOG {
        @Override
        Interval around(double survival, double standardError, double quantile) {
            double reach = quantile * standardError / survival;
            return clipped(survival * Math.exp(-reach), survival * Math.exp(reach));
        }
    },
    /** S^exp(±z·se/(S·ln S)): stays between 0 and 1 by itself, and covers better where few are at risk. */
    LOG_LOG {
        @Override
        Interval around(double survival, double standardError, double quantile) {
            double reach = Math.abs(quantile * standardError / (survival * Math.log(survival)));
            return clipped(Math.pow(survival, Math.exp(reach)), Math.pow(survival, Math.exp(-reach)));
        }
    };

    /** The usual one here. */
    public static final CurveInterval USUAL = LOG_LOG;

    /**
     * @param survival above 0, below 1
     * @param standardError of it
     * @param quantile of the standard normal, or of Student's t where the error is estimated from few units
     */
    abstract Interval around(double survival, double standardError, double quantile);

    private static Interval clipped(double low, double high) {
        return new Interval(Math.max(0, low), Math.min(1, high));
    }
}
