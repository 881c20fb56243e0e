package org.vanewright.engineering.flightlog;

/**
 * What was recorded at one moment, in the units of the trade. What was not recorded is NaN; only the time is always there.
 *
 * @param timeS seconds since the beginning of the log's first day, or since 1970-01-01T00:00Z where the log has dates
 * @param indicatedAirspeedKt as the instrument shows it
 * @param pressureAltitudeFt above 1013.25 hPa
 * @param groundSpeedKt over the ground
 * @param trackDeg over the ground, clockwise from true north, 0 to 360
 * @param loadFactor normal acceleration over the standard one; 1 in level flight
 * @param pitchRateDegPerS positive nose up
 * @param outsideAirTemperatureC as read
 * @param powerPercent of the rated power
 */
public record FlightSample(
        double timeS,
        double indicatedAirspeedKt,
        double pressureAltitudeFt,
        double groundSpeedKt,
        double trackDeg,
        double loadFactor,
        double pitchRateDegPerS,
        double outsideAirTemperatureC,
        double powerPercent) {

    static FlightSample of(double[] byQuantity) {
        return new FlightSample(
                byQuantity[0],
                byQuantity[1],
                byQuantity[2],
                byQuantity[3],
                byQuantity[4],
                byQuantity[5],
                byQuantity[6],
                byQuantity[7],
                byQuantity[8]);
    }

    /** One quantity of it. */
    public double get(LogQuantity quantity) {
        return switch (quantity) {
            case TIME -> timeS;
            case AIRSPEED -> indicatedAirspeedKt;
            case ALTITUDE -> pressureAltitudeFt;
            case GROUND_SPEED -> groundSpeedKt;
            case TRACK -> trackDeg;
            case LOAD_FACTOR -> loadFactor;
            case PITCH_RATE -> pitchRateDegPerS;
            case TEMPERATURE -> outsideAirTemperatureC;
            case POWER -> powerPercent;
        };
    }
}
