package org.vanewright.engineering.flighttest;

import org.vanewright.engineering.air.AirState;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * One speed at which the airspeed indicator was compared.
 *
 * @param indicatedKt as read, corrected for the instrument's own error
 * @param calibratedKt what it should have shown
 */
public record CalibrationRun(double indicatedKt, double calibratedKt) {
    /**
     * From a true airspeed, such as that of GPS legs.
     *
     * @param trueAirspeedKt through the air
     * @param air in which the legs were flown
     * @throws InvalidInputException field {@code trueAirspeedKt}: out of range
     */
    public static CalibrationRun of(double indicatedKt, double trueAirspeedKt, AirState air) {
        return new CalibrationRun(
                indicatedKt, Airspeeds.ofTrue(trueAirspeedKt, air).calibratedAirspeedKt());
    }

    /** Calibrated less indicated. */
    public double correctionKt() {
        return calibratedKt - indicatedKt;
    }
}
