package org.vanewright.engineering.flightlog;

/**
 * Something found in a log. What was not recorded, or does not belong to its kind, is NaN.
 *
 * @param kind what it is
 * @param startS its beginning; of a stall where 1.1 of its speed was passed
 * @param endS its end; of a stall its break
 * @param indicatedAirspeedKt mean; of a stall the lowest, smoothed over a second
 * @param pressureAltitudeFt mean; of a stall at its lowest speed
 * @param outsideAirTemperatureC mean
 * @param loadFactor of a stall, mean of the two seconds before its lowest speed
 * @param entryRateKtPerS of a stall, mean slowing down from 1.1 of its speed
 * @param powerPercent mean
 * @param climbRateFtPerMin slope of the altitude
 * @param groundSpeedKt mean
 * @param trackDeg mean
 * @param how by what it was found, in words
 */
public record FoundEvent(
        EventKind kind,
        double startS,
        double endS,
        double indicatedAirspeedKt,
        double pressureAltitudeFt,
        double outsideAirTemperatureC,
        double loadFactor,
        double entryRateKtPerS,
        double powerPercent,
        double climbRateFtPerMin,
        double groundSpeedKt,
        double trackDeg,
        String how) {
    /** The same with other times. */
    FoundEvent between(double otherStartS, double otherEndS) {
        return new FoundEvent(
                kind,
                otherStartS,
                otherEndS,
                indicatedAirspeedKt,
                pressureAltitudeFt,
                outsideAirTemperatureC,
                loadFactor,
                entryRateKtPerS,
                powerPercent,
                climbRateFtPerMin,
                groundSpeedKt,
                trackDeg,
                how);
    }
}
