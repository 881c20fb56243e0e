package org.vanewright.campaign.reduction;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Brings values to the same level of something they depend on, by one slope that all configurations share: deviations from
 * each configuration's own means, so that a difference between configurations is no part of it.
 *
 * @param slope change of the value with what it depends on
 * @param error standard uncertainty of the slope
 * @param degreesOfFreedom of that error; infinite where the slope was assumed
 * @param at level to which values are brought
 * @param of what they depend on
 */
record Levelling(double slope, double error, double degreesOfFreedom, double at, ToDoubleFunction<ReducedPoint> of) {
    /**
     * @param leastSpread widest spread within a configuration below which there is no slope to find
     * @return null where there is none
     */
    static @Nullable Levelling find(
            List<ReducedConfiguration> configurations,
            ToDoubleFunction<ReducedPoint> value,
            ToDoubleFunction<ReducedPoint> of,
            double at,
            double leastSpread) {
        double products = 0;
        double squares = 0;
        double values = 0;
        int freedom = -1;
        double widest = 0;
        for (ReducedConfiguration each : configurations) {
            List<ReducedPoint> points = each.points();
            double meanX = points.stream().mapToDouble(of).average().orElse(0);
            double meanY = points.stream().mapToDouble(value).average().orElse(0);
            for (ReducedPoint point : points) {
                double dx = of.applyAsDouble(point) - meanX;
                double dy = value.applyAsDouble(point) - meanY;
                products += dx * dy;
                squares += dx * dx;
                values += dy * dy;
            }
            freedom += Math.max(0, points.size() - 1);
            widest = Math.max(widest, spread(points, of));
        }
        if (freedom < 2 || widest < leastSpread) {
            return null;
        }
        double slope = products / squares;
        double rest = Math.max(0, values - slope * products);
        return new Levelling(slope, Math.sqrt(rest / freedom / squares), freedom, at, of);
    }

    /** With a slope that was not found but assumed, give or take. */
    static Levelling assumed(double slope, double error, double at, ToDoubleFunction<ReducedPoint> of) {
        return new Levelling(slope, error, Double.POSITIVE_INFINITY, at, of);
    }

    private static double spread(List<ReducedPoint> points, ToDoubleFunction<ReducedPoint> of) {
        double low = points.stream().mapToDouble(of).min().orElse(0);
        double high = points.stream().mapToDouble(of).max().orElse(0);
        return high - low;
    }

    /** By how much the value has to move. */
    double shift(ReducedPoint point) {
        return slope * (at - of.applyAsDouble(point));
    }
}
