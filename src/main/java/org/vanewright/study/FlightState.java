package org.vanewright.study;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeDocument.Masses;
import org.vanewright.airframe.AirframeDocument.Speeds;
import org.vanewright.engineering.air.AirState;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * An aircraft in level flight.
 *
 * @param condition what was asked for
 * @param massKg between empty and maximum mass; as typed where the airframe states no maximum
 * @param pressureAltitudeFt geopotential
 * @param air around it
 * @param speeds of it
 */
public record FlightState(
        StudyCondition condition, double massKg, double pressureAltitudeFt, AirState air, Airspeeds speeds) {
    private static final double GRAVITY_M_S2 = 9.80665;
    private static final double SLOWEST_KT = 10;
    private static final double FASTEST_KT = 250;
    /** Bounds of the masses that an airframe may state. */
    private static final double LIGHTEST_KG = 30;

    private static final double HEAVIEST_KG = 5700;
    private static final double LEAST_REYNOLDS = 1e4;

    /**
     * @throws InvalidInputException fields {@code massKg}, {@code pressureAltitudeFt}, {@code outsideAirTemperatureC},
     *     {@code condition}, {@code calibratedAirspeedKt}
     */
    public static FlightState of(AirframeDocument airframe, StudyQuery query) {
        Checks checks = new Checks();
        double mass = mass(airframe.masses(), query.massKg(), checks);
        StudyCondition condition =
                query.condition() == null ? StudyCondition.usual(airframe.speeds()) : query.condition();
        double speed = speedKt(condition, airframe.speeds(), query, checks);
        checks.throwIfAny();
        double altitude = query.pressureAltitudeFt() == null ? 0 : query.pressureAltitudeFt();
        AirState air = StandardAtmosphere.at(altitude, query.outsideAirTemperatureC());
        return new FlightState(condition, mass, altitude, air, Airspeeds.ofCalibrated(speed, air));
    }

    private static double speedKt(StudyCondition condition, @Nullable Speeds speeds, StudyQuery query, Checks checks) {
        Double own = query.calibratedAirspeedKt();
        if (condition == StudyCondition.SPEED) {
            checks.require(
                    own != null && own >= SLOWEST_KT && own <= FASTEST_KT,
                    "calibratedAirspeedKt",
                    own,
                    String.format(
                            Locale.ROOT,
                            "a calibrated airspeed from %.0f to %.0f kt%s",
                            SLOWEST_KT,
                            FASTEST_KT,
                            query.condition() == null ? ", since the airframe states none to look at" : ""));
            return own == null ? SLOWEST_KT : own;
        }
        Double stated = condition.statedKt(speeds);
        checks.require(
                stated != null,
                "condition",
                condition.label(),
                "one whose speed the airframe states, or another speed");
        return stated == null ? SLOWEST_KT : stated;
    }

    private static double mass(@Nullable Masses masses, @Nullable Double asked, Checks checks) {
        Double maximum = masses == null ? null : masses.maximumKg();
        Double empty = masses == null ? null : masses.emptyKg();
        if (maximum == null) {
            double lowest = empty == null ? LIGHTEST_KG : empty;
            checks.require(
                    asked != null && asked >= lowest && asked <= HEAVIEST_KG,
                    "massKg",
                    asked,
                    String.format(
                            Locale.ROOT,
                            "a mass from %.0f to %.0f kg, since the airframe states no maximum",
                            lowest,
                            HEAVIEST_KG));
            return asked == null ? lowest : asked;
        }
        double lowest = empty == null ? maximum / 10 : empty;
        if (asked == null) {
            return maximum;
        }
        checks.require(
                asked >= lowest && asked <= maximum,
                "massKg",
                asked,
                String.format(Locale.ROOT, "from %.0f kg empty to the maximum of %.0f kg", lowest, maximum));
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
