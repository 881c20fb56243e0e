package org.vanewright.study;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeDocument.Masses;
import org.vanewright.engineering.air.AirState;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * An aircraft in level flight.
 *
 * @param condition what was asked for
 * @param massKg between empty and maximum mass
 * @param pressureAltitudeFt geopotential
 * @param air around it
 * @param speeds of it
 */
public record FlightState(
        StudyCondition condition, double massKg, double pressureAltitudeFt, AirState air, Airspeeds speeds) {
    private static final double GRAVITY_M_S2 = 9.80665;
    private static final double SLOWEST_KT = 10;
    private static final double FASTEST_KT = 250;
    private static final double LEAST_REYNOLDS = 1e4;

    /**
     * @throws InvalidInputException fields {@code massKg}, {@code pressureAltitudeFt}, {@code outsideAirTemperatureC},
     *     {@code condition}, {@code calibratedAirspeedKt}
     */
    public static FlightState of(AirframeDocument airframe, StudyQuery query) {
        Checks checks = new Checks();
        double mass = mass(airframe.masses(), query.massKg(), checks);
        StudyCondition condition = query.condition() == null ? StudyCondition.STALL : query.condition();
        Double speed = condition == StudyCondition.SPEED
                ? query.calibratedAirspeedKt()
                : condition.statedKt(airframe.speeds());
        if (condition == StudyCondition.SPEED) {
            checks.range("calibratedAirspeedKt", speed, SLOWEST_KT, FASTEST_KT, "kt");
        } else {
            checks.require(
                    speed != null,
                    "condition",
                    condition.label(),
                    "one whose speed the airframe states, or another speed");
        }
        checks.throwIfAny();
        double altitude = query.pressureAltitudeFt() == null ? 0 : query.pressureAltitudeFt();
        AirState air = StandardAtmosphere.at(altitude, query.outsideAirTemperatureC());
        return new FlightState(
                condition, mass, altitude, air, Airspeeds.ofCalibrated(speed == null ? SLOWEST_KT : speed, air));
    }

    private static double mass(@Nullable Masses masses, @Nullable Double asked, Checks checks) {
        Double maximum = masses == null ? null : masses.maximumKg();
        Double empty = masses == null ? null : masses.emptyKg();
        if (!checks.require(maximum != null, "massKg", asked, "a mass of an airframe that states its maximum")) {
            return 0;
        }
        double highest = maximum == null ? 0 : maximum;
        double lowest = empty == null ? highest / 10 : empty;
        if (asked == null) {
            return highest;
        }
        checks.require(
                asked >= lowest && asked <= highest,
                "massKg",
                asked,
                String.format(Locale.ROOT, "from %.0f kg empty to the maximum of %.0f kg", lowest, highest));
        return asked;
    }

    public double trueAirspeedMps() {
        return speeds.trueAirspeedKt() * Airspeeds.METRES_PER_SECOND_PER_KNOT;
    }

    public double dynamicPressurePa() {
        double speed = trueAirspeedMps();
        return air.densityKgM3() * speed * speed / 2;
    }

    /** Lift equal to weight, on that area. */
    public double liftCoefficient(double areaM2) {
        return massKg * GRAVITY_M_S2 / (dynamicPressurePa() * areaM2);
    }

    /** Of a length at free-stream speed. */
    public double reynolds(double lengthMm) {
        return trueAirspeedMps() * lengthMm / 1000 / air.kinematicViscosityM2S();
    }

    /** The same of a chord, no less than the least at which the flow's methods speak. */
    double chordReynolds(double chordMm) {
        return Math.max(LEAST_REYNOLDS, reynolds(chordMm));
    }

    /** The same aircraft in the same air at another calibrated airspeed. */
    FlightState atSpeed(double calibratedAirspeedKt) {
        return new FlightState(
                StudyCondition.SPEED,
                massKg,
                pressureAltitudeFt,
                air,
                Airspeeds.ofCalibrated(calibratedAirspeedKt, air));
    }
}
