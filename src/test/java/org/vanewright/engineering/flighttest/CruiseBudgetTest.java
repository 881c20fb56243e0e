package org.vanewright.engineering.flighttest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.air.AirState;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.flighttest.UncertaintyBudget.Contribution;
import org.vanewright.engineering.inference.Sample;
import org.vanewright.engineering.input.InvalidInputException;

class CruiseBudgetTest {
    private static final CruiseBudget.Means AT = new CruiseBudget.Means(90, 4000, 12, 65, 540);
    private static final double STANDARD_KG = 560;

    /** The same power as flown, so that the exponent itself does not matter. */
    private static CruiseBudget.Level level(double exponentError) {
        AirState air = StandardAtmosphere.at(4000, 12.0);
        double trueKt = Airspeeds.ofCalibrated(90, air).trueAirspeedKt();
        double power = CruisePoint.in(air, trueKt, 65, 540).standardPowerKw(STANDARD_KG);
        return new CruiseBudget.Level(1.0 / 3, exponentError, Double.POSITIVE_INFINITY, power);
    }

    private static double contribution(UncertaintyBudget budget, String name) {
        return budget.contributions().stream()
                .filter(c -> c.name().equals(name))
                .mapToDouble(Contribution::standardUncertainty)
                .findFirst()
                .orElseThrow();
    }

    /**
     * By derivatives of V √(m_s/m) (P₀/P_iw)^⅓ with P_iw ∝ P m^−1.5 √(δ/θ): ∂ln V/∂ln m = −½ + ½ = 0, ∂ln V/∂ln P = −⅓,
     * ∂ln V/∂ln T = ⅙. That the mass drops out is the cube law's doing.
     */
    @Test
    void contributionsByHand() {
        UncertaintyBudget budget = new CruiseBudget(1, 0.5, 5, 2, 50, 1).of(AT, level(0), STANDARD_KG, 92, 0.3, 6);
        double speed = 90 * Math.sqrt(560.0 / 540);
        assertThat(budget.unit()).isEqualTo("kt");
        assertThat(budget.value()).isEqualTo(92);
        assertThat(contribution(budget, "Scatter of the points")).isEqualTo(0.3);
        assertThat(contribution(budget, "Reading")).isCloseTo(speed / 90 / Math.sqrt(12), within(1e-3));
        assertThat(contribution(budget, "Calibration")).isCloseTo(speed / 90 * 0.5, within(1e-3));
        assertThat(contribution(budget, "Mass")).isCloseTo(0, within(1e-3));
        assertThat(contribution(budget, "Power")).isCloseTo(speed / 3 * 2 / 65, within(2e-3));
        assertThat(contribution(budget, "Temperature")).isCloseTo(speed / 6 / 285.15, within(1e-3));
        assertThat(contribution(budget, "Exponent of power")).isZero();
        assertThat(budget.effectiveDegreesOfFreedom()).isGreaterThan(5);
    }

    @Test
    void theExponentCountsWhereThePowerWasAnother() {
        CruiseBudget.Level level = new CruiseBudget.Level(1.0 / 3, 0.05, 7, 1.2 * level(0).standardPower());
        UncertaintyBudget budget = new CruiseBudget(0, 0, 0, 0, 0, 0).of(AT, level, STANDARD_KG, 92, 0.1, 9);
        double speed = 90 * Math.sqrt(560.0 / 540) * Math.cbrt(1.2);
        assertThat(contribution(budget, "Exponent of power")).isCloseTo(speed * Math.log(1.2) * 0.05, within(1e-3));
    }

    /** Speeds drawn with every cause at once scatter by what the budget says. */
    @Test
    void propagationAgainstChance() {
        Well19937c chance = new Well19937c(9);
        CruiseBudget.Level level = level(0);
        double[] speeds = new double[10_000];
        for (int i = 0; i < speeds.length; i++) {
            AirState air = StandardAtmosphere.at(4000 + 100 * chance.nextGaussian(), 12 + 2 * chance.nextGaussian());
            double read = 90 + 0.6 * chance.nextGaussian() + 2 * (chance.nextDouble() - 0.5);
            double trueKt = Airspeeds.ofCalibrated(read, air).trueAirspeedKt();
            CruisePoint point =
                    CruisePoint.in(air, trueKt, 65 + 2 * chance.nextGaussian(), 540 + 8 * chance.nextGaussian());
            speeds[i] = point.standardAirspeedKt(STANDARD_KG)
                    * Math.cbrt(level.standardPower() / point.standardPowerKw(STANDARD_KG));
        }
        UncertaintyBudget budget = new CruiseBudget(2, 0.6, 8, 2, 100, 2).of(AT, level, STANDARD_KG, 92, 0, 6);
        assertThat(Sample.of(speeds).standardDeviation())
                .isCloseTo(budget.combined(), within(0.03 * budget.combined()));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new CruiseBudget(-1, Double.NaN, 0, 0, 0, 90).of(AT, level(0), 560, 92, 0, 6))
                .isInstanceOfSatisfying(
                        InvalidInputException.class,
                        e -> assertThat(e.problems())
                                .extracting("field")
                                .containsExactly("resolutionKt", "calibrationKt", "temperatureC"));
    }
}
