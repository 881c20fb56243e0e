package org.vanewright.engineering.inference.survival;

import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.Interval;

/**
 * Intervals of a product-limit curve where the installation, not the device, is the unit. Each device's influence on ln S is
 * Σ (dN − Y·d/n)/(n − d) over the times of losses; influences are summed within an installation before they are squared, so
 * devices of one installation may be as alike as they like. With every device an installation of its own it is
 * Greenwood's error. Z. Ying and L. J. Wei, The Kaplan-Meier Estimate for Dependent Failure Time Observations, J.
 * Multivariate Analysis 50, 1994 (from memory). With few installations it is rough: the sum is enlarged by G/(G − 1) and
 * Student's t with G − 1 degrees of freedom takes the place of the normal distribution (common practice, no source).
 */
public final class SharedFate {
    private SharedFate() {}

    /**
     * Standard error of the curve at a time.
     *
     * @param installations lifetimes of each
     * @return null with fewer than two installations: one cannot say how much they differ
     */
    public static @Nullable Double standardError(List<List<Lifetime>> installations, double hours) {
        int count = installations.size();
        if (count < 2) {
            return null;
        }
        double variance = variance(installations, hours) * count / (count - 1);
        return survival(installations, hours) * Math.sqrt(variance);
    }

    /** Sum of the squared influences on ln S, without any correction for few. */
    static double variance(List<List<Lifetime>> installations, double hours) {
        List<RiskSet> sets = sets(installations, hours);
        double sum = 0;
        for (List<Lifetime> each : installations) {
            double influence = 0;
            for (RiskSet set : sets) {
                int left = set.atRisk() - set.lost();
                if (left > 0) {
                    double lost = each.stream()
                            .filter(l -> l.lost() && l.hours() == set.hours())
                            .count();
                    double expected = KaplanMeier.atRisk(each, set.hours()) * (double) set.lost() / set.atRisk();
                    influence += (lost - expected) / left;
                }
            }
            sum += influence * influence;
        }
        return sum;
    }

    /**
     * Limits of the curve at a time on the log-log scale.
     *
     * @return null with fewer than two installations, and where the curve is 1 or 0, so that no error can be estimated
     */
    public static @Nullable Interval interval(List<List<Lifetime>> installations, double hours, double confidence) {
        Double error = standardError(installations, hours);
        double survival = survival(installations, hours);
        if (error == null || survival <= 0 || survival >= 1) {
            return null;
        }
        double quantile =
                new TDistribution(installations.size() - 1.0).inverseCumulativeProbability(0.5 + confidence / 2);
        return CurveInterval.LOG_LOG.around(survival, error, quantile);
    }

    private static List<RiskSet> sets(List<List<Lifetime>> installations, double hours) {
        return RiskSet.of(installations.stream().flatMap(List::stream).toList()).stream()
                .filter(set -> set.hours() <= hours)
                .toList();
    }

    private static double survival(List<List<Lifetime>> installations, double hours) {
        double survival = 1;
        for (RiskSet set : sets(installations, hours)) {
            survival *= 1 - (double) set.lost() / set.atRisk();
        }
        return survival;
    }
}
