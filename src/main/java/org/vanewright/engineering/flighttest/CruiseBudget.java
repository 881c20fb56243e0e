package org.vanewright.engineering.flighttest;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import org.vanewright.engineering.air.AirState;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.flighttest.UncertaintyBudget.Contribution;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Uncertainty of a cruising speed at the standard mass, sea-level density and one power, V_iw (P₀/P_iw)^b, taken at the
 * means of its points and propagated by {@link Propagation}. Only scatter shrinks with more points. What each reading is off
 * by is a rectangle of standard deviation resolution/√12 (JCGM 100:2008, 4.3.7).
 *
 * @param resolutionKt smallest step that can be read of the airspeed indicator
 * @param calibrationKt standard uncertainty of the calibrated airspeed there, by the position-error curve
 * @param massKg standard uncertainty of the mass
 * @param powerPercent standard uncertainty of the power
 * @param altitudeFt standard uncertainty of the pressure altitude
 * @param temperatureC standard uncertainty of the outside air temperature
 */
public record CruiseBudget(
        double resolutionKt,
        double calibrationKt,
        double massKg,
        double powerPercent,
        double altitudeFt,
        double temperatureC) {
    /**
     * Means of the points.
     *
     * @param calibratedAirspeedKt steady
     * @param pressureAltitudeFt there
     * @param outsideAirTemperatureC there
     * @param powerPercent of the rated power
     * @param massKg then
     */
    public record Means(
            double calibratedAirspeedKt,
            double pressureAltitudeFt,
            double outsideAirTemperatureC,
            double powerPercent,
            double massKg) {
        private Means airspeed(double other) {
            return new Means(other, pressureAltitudeFt, outsideAirTemperatureC, powerPercent, massKg);
        }

        private Means altitude(double other) {
            return new Means(calibratedAirspeedKt, other, outsideAirTemperatureC, powerPercent, massKg);
        }

        private Means temperature(double other) {
            return new Means(calibratedAirspeedKt, pressureAltitudeFt, other, powerPercent, massKg);
        }

        private Means power(double other) {
            return new Means(calibratedAirspeedKt, pressureAltitudeFt, outsideAirTemperatureC, other, massKg);
        }

        private Means mass(double other) {
            return new Means(calibratedAirspeedKt, pressureAltitudeFt, outsideAirTemperatureC, powerPercent, other);
        }
    }

    /**
     * How speeds were brought to one power.
     *
     * @param exponent b
     * @param exponentError standard uncertainty of b
     * @param degreesOfFreedom of that; infinite where b was assumed
     * @param standardPower P₀, in per cent of the rated power
     */
    public record Level(double exponent, double exponentError, double degreesOfFreedom, double standardPower) {
        private Level exponent(double other) {
            return new Level(other, exponentError, degreesOfFreedom, standardPower);
        }
    }

    /**
     * @param scatterKt standard error of the mean of the reduced speeds
     * @param count of the points, two or more
     * @param valueKt that mean
     * @throws InvalidInputException naming each field that is out of range
     */
    public UncertaintyBudget of(
            Means at, Level level, double standardMassKg, double valueKt, double scatterKt, int count) {
        check();
        ToDoubleFunction<Means> speed = m -> speed(m, level, standardMassKg);
        List<Contribution> list = new ArrayList<>();
        list.add(new Contribution(
                "Scatter of the points", scatterKt, count - 1, "standard error from " + count + " points"));
        list.add(Contribution.given(
                "Reading",
                Propagation.step(
                        v -> speed.applyAsDouble(at.airspeed(v)),
                        at.calibratedAirspeedKt(),
                        resolutionKt / Math.sqrt(12)),
                "rectangle as wide as the resolution"));
        list.add(Contribution.given(
                "Calibration",
                Propagation.step(v -> speed.applyAsDouble(at.airspeed(v)), at.calibratedAirspeedKt(), calibrationKt),
                "position-error curve"));
        list.add(Contribution.given(
                "Mass",
                Propagation.step(m -> speed.applyAsDouble(at.mass(m)), at.massKg(), massKg),
                "by lift and power at the standard mass"));
        list.add(Contribution.given(
                "Power",
                Propagation.step(p -> speed.applyAsDouble(at.power(p)), at.powerPercent(), powerPercent),
                String.format(Locale.ROOT, "by the exponent %.2f", level.exponent())));
        list.add(Contribution.given(
                "Altitude",
                Propagation.step(h -> speed.applyAsDouble(at.altitude(h)), at.pressureAltitudeFt(), altitudeFt),
                "by density, in the power"));
        list.add(Contribution.given(
                "Temperature",
                Propagation.step(
                        c -> speed.applyAsDouble(at.temperature(c)), at.outsideAirTemperatureC(), temperatureC),
                "by density, in the power"));
        list.add(exponent(at, level, standardMassKg));
        return new UncertaintyBudget(valueKt, "kt", list);
    }

    private static Contribution exponent(Means at, Level level, double standardMassKg) {
        return new Contribution(
                "Exponent of power",
                Propagation.step(
                        b -> speed(at, level.exponent(b), standardMassKg), level.exponent(), level.exponentError()),
                level.degreesOfFreedom(),
                Double.isInfinite(level.degreesOfFreedom())
                        ? "assumed, as wide as 0.1 either way (common practice, no source)"
                        : "its standard error in the regression");
    }

    private static double speed(Means at, Level level, double standardMassKg) {
        AirState air = StandardAtmosphere.at(at.pressureAltitudeFt(), at.outsideAirTemperatureC());
        double trueKt = Airspeeds.ofCalibrated(at.calibratedAirspeedKt(), air).trueAirspeedKt();
        CruisePoint point = CruisePoint.in(air, trueKt, at.powerPercent(), at.massKg());
        return point.standardAirspeedKt(standardMassKg)
                * Math.pow(level.standardPower() / point.standardPowerKw(standardMassKg), level.exponent());
    }

    private void check() {
        Checks checks = new Checks();
        checks.range("resolutionKt", resolutionKt, 0, 50, "kt");
        checks.range("calibrationKt", calibrationKt, 0, 50, "kt");
        checks.range("massKg", massKg, 0, FuelMass.HEAVIEST_KG, "kg");
        checks.range("powerPercent", powerPercent, 0, 100, "%");
        checks.range("altitudeFt", altitudeFt, 0, 5_000, "ft");
        checks.range("temperatureC", temperatureC, 0, 50, "°C");
        checks.throwIfAny();
    }
}
