package org.vanewright.engineering.air;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Airspeeds of an aircraft in subsonic flight through air that is an ideal gas.
 *
 * <pre>
 * qc = P₀ [(1 + 0.2 (Vc/a₀)²)^3.5 − 1]         M = √(5 [(qc/p + 1)^(2/7) − 1])
 * Vt = M a          Ve = Vt √(ρ/ρ₀)
 * </pre>
 *
 * Sources: Society of Flight Test Engineers, Reference Handbook, 2013, part 4, "Airspeed"; isentropic flow of a gas with
 * a ratio of specific heats of 1.4 (L. J. Clancy, Aerodynamics, 1975, chapter 3, from memory).
 *
 * @param impactPressurePa total less static pressure
 * @param calibratedAirspeedKt what a faultless airspeed indicator shows
 * @param equivalentAirspeedKt speed with this dynamic pressure at sea-level standard density
 * @param trueAirspeedKt speed through the air
 * @param mach true airspeed over the speed of sound
 */
public record Airspeeds(
        double impactPressurePa,
        double calibratedAirspeedKt,
        double equivalentAirspeedKt,
        double trueAirspeedKt,
        double mach) {
    public static final double METRES_PER_SECOND_PER_KNOT = 1852.0 / 3600;

    /** At sea level in the standard atmosphere. */
    public static final double SEA_LEVEL_SPEED_OF_SOUND_MPS =
            StandardAtmosphere.speedOfSoundMps(StandardAtmosphere.SEA_LEVEL_TEMPERATURE_K);

    private static final double FASTEST_KT = 1_000;
    private static final double HIGHEST_IMPACT_PA = 90_000;

    /**
     * From what an airspeed indicator without faults shows.
     *
     * @param calibratedAirspeedKt 0 to 1,000 kt
     * @throws InvalidInputException field {@code calibratedAirspeedKt}: out of range, or supersonic in that air
     */
    public static Airspeeds ofCalibrated(double calibratedAirspeedKt, AirState air) {
        checkRange("calibratedAirspeedKt", calibratedAirspeedKt, FASTEST_KT, "kt");
        double mach = calibratedAirspeedKt * METRES_PER_SECOND_PER_KNOT / SEA_LEVEL_SPEED_OF_SOUND_MPS;
        double impact = impactPressurePa(mach, StandardAtmosphere.SEA_LEVEL_PRESSURE_PA);
        return ofImpact("calibratedAirspeedKt", calibratedAirspeedKt, impact, air);
    }

    /**
     * From the difference between total and static pressure.
     *
     * @param impactPressurePa 0 to 90,000 Pa
     * @throws InvalidInputException field {@code impactPressurePa}: out of range, or supersonic in that air
     */
    public static Airspeeds ofImpactPressure(double impactPressurePa, AirState air) {
        checkRange("impactPressurePa", impactPressurePa, HIGHEST_IMPACT_PA, "Pa");
        return ofImpact("impactPressurePa", impactPressurePa, impactPressurePa, air);
    }

    /**
     * From the speed through the air.
     *
     * @param trueAirspeedKt 0 to 1,000 kt
     * @throws InvalidInputException field {@code trueAirspeedKt}: out of range, or supersonic in that air
     */
    public static Airspeeds ofTrue(double trueAirspeedKt, AirState air) {
        checkRange("trueAirspeedKt", trueAirspeedKt, FASTEST_KT, "kt");
        double mach = trueAirspeedKt * METRES_PER_SECOND_PER_KNOT / air.speedOfSoundMps();
        return ofImpact("trueAirspeedKt", trueAirspeedKt, impactPressurePa(mach, air.pressurePa()), air);
    }

    /** Dynamic pressure of incompressible flow, ½ ρ₀ Ve². */
    public double dynamicPressurePa() {
        double equivalentMps = equivalentAirspeedKt * METRES_PER_SECOND_PER_KNOT;
        return StandardAtmosphere.SEA_LEVEL_DENSITY_KG_M3 * equivalentMps * equivalentMps / 2;
    }

    private static Airspeeds ofImpact(String field, double given, double impactPa, AirState air) {
        double mach = mach(impactPa, air.pressurePa());
        Checks checks = new Checks();
        checks.require(mach < 1, field, given, "a speed below that of sound");
        checks.throwIfAny();
        double trueMps = mach * air.speedOfSoundMps();
        double sigma = air.densityKgM3() / StandardAtmosphere.SEA_LEVEL_DENSITY_KG_M3;
        return new Airspeeds(
                impactPa,
                mach(impactPa, StandardAtmosphere.SEA_LEVEL_PRESSURE_PA)
                        * SEA_LEVEL_SPEED_OF_SOUND_MPS
                        / METRES_PER_SECOND_PER_KNOT,
                trueMps * Math.sqrt(sigma) / METRES_PER_SECOND_PER_KNOT,
                trueMps / METRES_PER_SECOND_PER_KNOT,
                mach);
    }

    private static void checkRange(String field, @Nullable Double value, double highest, String unit) {
        Checks checks = new Checks();
        checks.range(field, value, 0, highest, unit);
        checks.throwIfAny();
    }

    /** (1 + 0.2 M²)^3.5 − 1, kept exact where M is small. */
    private static double impactPressurePa(double mach, double pressurePa) {
        return pressurePa * Math.expm1(3.5 * Math.log1p(0.2 * mach * mach));
    }

    private static double mach(double impactPa, double pressurePa) {
        return Math.sqrt(5 * Math.expm1(Math.log1p(impactPa / pressurePa) / 3.5));
    }
}
