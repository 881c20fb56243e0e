package org.vanewright.engineering.flighttest;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.flighttest.ClimbReduction.Climb;
import org.vanewright.engineering.flighttest.ClimbReduction.Wing;
import org.vanewright.engineering.flighttest.UncertaintyBudget.Contribution;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Uncertainty of a rate of climb at the standard mass, taken at the means of its climbs and propagated by
 * {@link Propagation}. What altimeter and watch add to one climb differs from climb to climb and so is part of the scatter;
 * an altimeter whose scale is wrong all the way is not in it.
 *
 * @param airspeedKt standard uncertainty of the calibrated airspeed, reading and curve together
 * @param massKg standard uncertainty of the mass
 * @param altitudeFt standard uncertainty of the pressure altitude
 * @param temperatureC standard uncertainty of the outside air temperature
 */
public record ClimbBudget(double airspeedKt, double massKg, double altitudeFt, double temperatureC) {
    /** Span efficiencies of light aircraft lie between 0.7 and 0.85: common practice, no source; taken as a rectangle. */
    static final double SPAN_EFFICIENCY_ERROR = 0.15 / Math.sqrt(12);

    /**
     * Means of the climbs.
     *
     * @param pressureRateFtPerMin by the altimeter
     * @param pressureAltitudeFt in their middle
     * @param outsideAirTemperatureC there
     * @param calibratedAirspeedKt steady
     * @param massKg then
     */
    public record Means(
            double pressureRateFtPerMin,
            double pressureAltitudeFt,
            double outsideAirTemperatureC,
            double calibratedAirspeedKt,
            double massKg) {
        private double rate(Wing wing, double standardMassKg) {
            double trueKt = Airspeeds.ofCalibrated(
                            calibratedAirspeedKt, StandardAtmosphere.at(pressureAltitudeFt, outsideAirTemperatureC))
                    .trueAirspeedKt();
            return ClimbReduction.of(
                            new Climb(pressureRateFtPerMin, pressureAltitudeFt, outsideAirTemperatureC, trueKt, massKg),
                            wing,
                            standardMassKg)
                    .standardFtPerMin();
        }

        private Means airspeed(double other) {
            return new Means(pressureRateFtPerMin, pressureAltitudeFt, outsideAirTemperatureC, other, massKg);
        }

        private Means altitude(double other) {
            return new Means(pressureRateFtPerMin, other, outsideAirTemperatureC, calibratedAirspeedKt, massKg);
        }

        private Means temperature(double other) {
            return new Means(pressureRateFtPerMin, pressureAltitudeFt, other, calibratedAirspeedKt, massKg);
        }

        private Means mass(double other) {
            return new Means(
                    pressureRateFtPerMin, pressureAltitudeFt, outsideAirTemperatureC, calibratedAirspeedKt, other);
        }
    }

    /**
     * @param valueFtPerMin mean of the reduced rates
     * @param scatterFtPerMin its standard error
     * @param count of the climbs, two or more
     * @throws InvalidInputException naming each field that is out of range
     */
    public UncertaintyBudget of(
            Means at, Wing wing, double standardMassKg, double valueFtPerMin, double scatterFtPerMin, int count) {
        check();
        List<Contribution> list = new ArrayList<>();
        list.add(new Contribution(
                "Scatter of the climbs", scatterFtPerMin, count - 1, "standard error from " + count + " climbs"));
        list.add(Contribution.given(
                "Airspeed",
                Propagation.step(v -> at.airspeed(v).rate(wing, standardMassKg), at.calibratedAirspeedKt(), airspeedKt),
                "by induced drag; reading and position-error curve"));
        list.add(Contribution.given(
                "Mass",
                Propagation.step(m -> at.mass(m).rate(wing, standardMassKg), at.massKg(), massKg),
                "by the weight lifted and by induced drag"));
        list.add(Contribution.given(
                "Altitude",
                Propagation.step(h -> at.altitude(h).rate(wing, standardMassKg), at.pressureAltitudeFt(), altitudeFt),
                "by the standard temperature there"));
        list.add(Contribution.given(
                "Temperature",
                Propagation.step(
                        c -> at.temperature(c).rate(wing, standardMassKg), at.outsideAirTemperatureC(), temperatureC),
                "by the ratio to the standard temperature"));
        list.add(Contribution.given(
                "Span efficiency",
                Propagation.step(
                        e -> at.rate(new Wing(wing.areaM2(), wing.aspectRatio(), e), standardMassKg),
                        wing.spanEfficiency(),
                        SPAN_EFFICIENCY_ERROR),
                "assumed, rectangle from 0.7 to 0.85 (common practice, no source)"));
        return new UncertaintyBudget(valueFtPerMin, "ft/min", list);
    }

    private void check() {
        Checks checks = new Checks();
        checks.range("airspeedKt", airspeedKt, 0, 50, "kt");
        checks.range("massKg", massKg, 0, FuelMass.HEAVIEST_KG, "kg");
        checks.range("altitudeFt", altitudeFt, 0, 5_000, "ft");
        checks.range("temperatureC", temperatureC, 0, 50, "°C");
        checks.throwIfAny();
    }
}
