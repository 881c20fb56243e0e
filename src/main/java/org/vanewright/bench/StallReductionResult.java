package org.vanewright.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Stalls at the standard mass.
 *
 * @param points in the order given
 * @param meanKt of the standard airspeeds
 * @param standardDeviationKt of single stalls; null for one
 * @param standardErrorKt of the mean; null for one stall
 * @param entryRateSlope kt per kt/s; null where entry rates do not vary enough
 * @param atOneKnotPerSecondKt at an entry rate of 1 kt/s by that slope, or the mean without one
 * @param method how it was computed
 * @param sources citations
 * @param validity warnings
 */
public record StallReductionResult(
        List<Point> points,
        double meanKt,
        @Nullable Double standardDeviationKt,
        @Nullable Double standardErrorKt,
        @Nullable Double entryRateSlope,
        double atOneKnotPerSecondKt,
        String method,
        List<String> sources,
        List<String> validity) {
    /**
     * One stall.
     *
     * @param standardAirspeedKt at the standard mass and a load factor of 1
     * @param liftCoefficient at the break; null without a wing area
     */
    public record Point(double standardAirspeedKt, @Nullable Double liftCoefficient) {}
}
