package org.vanewright.engineering.flighttest;

import org.vanewright.engineering.air.AirState;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.input.Checks;

/**
 * Steady level flight at one power, and what it is at a standard mass and sea-level density:
 *
 * <pre>
 * P_iw = P (W_s/W)^1.5 √σ        V_iw = V √σ √(W_s/W)
 * </pre>
 *
 * With lift and drag coefficients unchanged, every density and mass falls on one curve. Society of Flight Test Engineers,
 * Reference Handbook, 2013, part 12, which corrects across no more than 5,000 ft and 10 % of the mass.
 *
 * @param trueAirspeedKt steady
 * @param powerKw at the propeller shaft; any measure that is proportional to it does
 * @param massKg then
 * @param densityRatio σ, density over that of the standard atmosphere at sea level
 */
public record CruisePoint(double trueAirspeedKt, double powerKw, double massKg, double densityRatio) {
    /** The mass beyond which a reduction is doubtful, as a fraction of the standard mass. */
    public static final double MASS_BAND = 0.1;

    public static CruisePoint in(AirState air, double trueAirspeedKt, double powerKw, double massKg) {
        return new CruisePoint(
                trueAirspeedKt, powerKw, massKg, air.densityKgM3() / StandardAtmosphere.SEA_LEVEL_DENSITY_KG_M3);
    }

    /** P_iw, in the unit of the power. */
    public double standardPowerKw(double standardMassKg) {
        return powerKw * Math.pow(standardMassKg / massKg, 1.5) * Math.sqrt(densityRatio);
    }

    /** V_iw: equivalent airspeed at the standard mass. */
    public double standardAirspeedKt(double standardMassKg) {
        return trueAirspeedKt * Math.sqrt(densityRatio * standardMassKg / massKg);
    }

    /** True airspeed at a standard mass and density; its power is {@link #powerKw(double, double)}. */
    public double trueAirspeedKt(double standardMassKg, double standardDensityRatio) {
        return standardAirspeedKt(standardMassKg) / Math.sqrt(standardDensityRatio);
    }

    public double powerKw(double standardMassKg, double standardDensityRatio) {
        return standardPowerKw(standardMassKg) / Math.sqrt(standardDensityRatio);
    }

    /** Whether the mass is within a tenth of the standard one. */
    public boolean isNear(double standardMassKg) {
        return Math.abs(massKg - standardMassKg) <= MASS_BAND * standardMassKg;
    }

    /** Notes each field that is out of range, under the prefix. */
    void check(Checks checks, String prefix) {
        checks.range(prefix + ".trueAirspeedKt", trueAirspeedKt, 1, 1_000, "kt");
        checks.range(prefix + ".powerKw", powerKw, 0.01, 100_000, "kW");
        checks.range(prefix + ".massKg", massKg, 10, FuelMass.HEAVIEST_KG, "kg");
        checks.range(prefix + ".densityRatio", densityRatio, 0.05, 1.5, "");
    }
}
