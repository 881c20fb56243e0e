package org.vanewright.engineering.flighttest;

import org.vanewright.engineering.air.AirState;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * A climb at a standard mass. An altimeter counts pressure; in air warmer than standard a foot of it is longer by the ratio of
 * temperatures:
 *
 * <pre>
 * dH/dt = (T/T_s) dH_p/dt
 * (dH/dt)_s = (W/W_s) dH/dt + 2/(π A e ρ V S) · (W² − W_s²)/W_s
 * </pre>
 *
 * the second line at the same power, true airspeed and density: the lighter aircraft climbs faster by the weight it does not
 * lift and by the induced drag it does not have. Society of Flight Test Engineers, Reference Handbook, 2013, part 12, steps 1,
 * 5 and 6. Power is not corrected for the day's air: compare climbs at like density altitudes.
 *
 * @param tapelineFtPerMin dH/dt
 * @param weightFtPerMin what the first term of the weight correction adds
 * @param inducedFtPerMin what induced drag adds
 * @param standardFtPerMin (dH/dt)_s
 */
public record ClimbReduction(
        double tapelineFtPerMin, double weightFtPerMin, double inducedFtPerMin, double standardFtPerMin) {
    private static final double GRAVITY = 9.80665;
    private static final double FT_PER_MIN_OF_MPS = 60 / StandardAtmosphere.METRES_PER_FOOT;

    /**
     * A climb as flown.
     *
     * @param pressureRateFtPerMin by the altimeter set to 1013.25 hPa, mean of two opposite directions across the wind
     * @param pressureAltitudeFt in the middle of the climb
     * @param outsideAirTemperatureC there
     * @param trueAirspeedKt steady
     * @param massKg then
     */
    public record Climb(
            double pressureRateFtPerMin,
            double pressureAltitudeFt,
            double outsideAirTemperatureC,
            double trueAirspeedKt,
            double massKg) {}

    /**
     * The wing.
     *
     * @param areaM2 S
     * @param aspectRatio A
     * @param spanEfficiency e, 0.7 to 0.85 for light aircraft (common practice, no source)
     */
    public record Wing(double areaM2, double aspectRatio, double spanEfficiency) {}

    /** @throws InvalidInputException naming each field that is out of range */
    public static ClimbReduction of(Climb climb, Wing wing, double standardMassKg) {
        AirState air = StandardAtmosphere.at(climb.pressureAltitudeFt(), climb.outsideAirTemperatureC());
        check(climb, wing, standardMassKg);
        double tapeline = climb.pressureRateFtPerMin()
                * air.temperatureK()
                / StandardAtmosphere.temperatureK(climb.pressureAltitudeFt() * StandardAtmosphere.METRES_PER_FOOT);
        double weight = tapeline * (climb.massKg() / standardMassKg - 1);
        double speed = climb.trueAirspeedKt() * Airspeeds.METRES_PER_SECOND_PER_KNOT;
        double squares = GRAVITY * (climb.massKg() * climb.massKg() - standardMassKg * standardMassKg) / standardMassKg;
        double induced = 2
                * squares
                / (Math.PI * wing.aspectRatio() * wing.spanEfficiency() * air.densityKgM3() * speed * wing.areaM2())
                * FT_PER_MIN_OF_MPS;
        return new ClimbReduction(tapeline, weight, induced, tapeline + weight + induced);
    }

    private static void check(Climb climb, Wing wing, double standardMassKg) {
        Checks checks = new Checks();
        checks.range("pressureRateFtPerMin", climb.pressureRateFtPerMin(), -10_000, 10_000, "ft/min");
        checks.range("trueAirspeedKt", climb.trueAirspeedKt(), 5, 1_000, "kt");
        checks.range("massKg", climb.massKg(), 10, FuelMass.HEAVIEST_KG, "kg");
        checks.range("standardMassKg", standardMassKg, 10, FuelMass.HEAVIEST_KG, "kg");
        checks.range("areaM2", wing.areaM2(), 0.1, 500, "m²");
        checks.range("aspectRatio", wing.aspectRatio(), 0.5, 60, "");
        checks.range("spanEfficiency", wing.spanEfficiency(), 0.2, 1.2, "");
        checks.throwIfAny();
    }
}
