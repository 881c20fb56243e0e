package org.vanewright.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How long devices stay on.
 *
 * @param groups in the order given
 * @param logRank whether the groups lose at the same rate; null with one group, or where nothing can be compared
 * @param method how it was computed
 * @param sources citations
 * @param validity warnings
 */
public record RetentionResult(
        List<Group> groups, @Nullable LogRankTest logRank, String method, List<String> sources, List<String> validity) {
    /**
     * One group.
     *
     * @param name as given
     * @param curve one entry for each time of losses, rising; empty where nothing was lost
     * @param medianHours first time at which half or fewer are left; null where more always are
     */
    public record Group(
            String name, List<Step> curve, @Nullable Double medianHours) {}

    /**
     * A time of losses.
     *
     * @param hours when
     * @param atRisk in place just before
     * @param lost then
     * @param survival just after
     * @param standardError of it, Greenwood's
     * @param low lower limit
     * @param high upper limit
     */
    public record Step(
            double hours, int atRisk, int lost, double survival, double standardError, double low, double high) {}

    /**
     * The log-rank test.
     *
     * @param chiSquared its statistic
     * @param degreesOfFreedom groups less one
     * @param pValue chance of so large a statistic when there is no difference
     */
    public record LogRankTest(double chiSquared, int degreesOfFreedom, double pValue) {}
}
