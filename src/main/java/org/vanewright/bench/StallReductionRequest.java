package org.vanewright.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Stalls of one configuration.
 *
 * @param standardMassKg to which all are reduced
 * @param wingAreaM2 of the lift coefficients; absent for none
 * @param points one or more stalls
 */
public record StallReductionRequest(
        @Nullable Double standardMassKg,
        @Nullable Double wingAreaM2,
        @Nullable List<@Nullable Point> points) {
    /**
     * One stall.
     *
     * @param calibratedAirspeedKt at the break
     * @param massKg then
     * @param loadFactor then; absent for 1
     * @param entryRateKtPerS loss of speed on the way into the stall, positive; absent where it was not measured
     */
    public record Point(
            @Nullable Double calibratedAirspeedKt,
            @Nullable Double massKg,
            @Nullable Double loadFactor,
            @Nullable Double entryRateKtPerS) {}
}
