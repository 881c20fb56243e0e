package org.vanewright.campaign.reduction;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.ConfigurationDocument;
import org.vanewright.engineering.flighttest.UncertaintyBudget;
import org.vanewright.engineering.inference.Interval;

/**
 * What was flown in one configuration.
 *
 * @param configuration of the plan
 * @param points in the order of flying
 * @param mean of what is compared; null without test points
 * @param standardDeviation of single test points; null below two
 * @param interval of the mean by scatter alone, 95 %; null below two
 * @param budget of the uncertainty of what is compared; null below two test points
 */
public record ReducedConfiguration(
        ConfigurationDocument configuration,
        List<ReducedPoint> points,
        @Nullable Double mean,
        @Nullable Double standardDeviation,
        @Nullable Interval interval,
        @Nullable UncertaintyBudget budget) {
    /** What is compared, in the order of flying. */
    public double[] values() {
        return points.stream().mapToDouble(ReducedPoint::compared).toArray();
    }

    /** Key and name, such as {@code B: One row at 8 %}. */
    public String label() {
        return configuration.key() + ": " + configuration.name();
    }
}
