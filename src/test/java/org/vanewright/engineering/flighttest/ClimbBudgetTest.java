package org.vanewright.engineering.flighttest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.flighttest.ClimbReduction.Wing;
import org.vanewright.engineering.flighttest.UncertaintyBudget.Contribution;
import org.vanewright.engineering.inference.Sample;
import org.vanewright.engineering.input.InvalidInputException;

class ClimbBudgetTest {
    private static final ClimbBudget.Means AT = new ClimbBudget.Means(700, 4000, 12, 60, 540);
    private static final Wing WING = new Wing(10.5, 7.2, 0.8);
    private static final double STANDARD_KG = 560;

    private static double contribution(UncertaintyBudget budget, String name) {
        return budget.contributions().stream()
                .filter(c -> c.name().equals(name))
                .mapToDouble(Contribution::standardUncertainty)
                .findFirst()
                .orElseThrow();
    }

    private static double rate(double altitudeFt, double temperatureC, double calibratedKt, double massKg, double e) {
        double trueKt = Airspeeds.ofCalibrated(calibratedKt, StandardAtmosphere.at(altitudeFt, temperatureC))
                .trueAirspeedKt();
        return ClimbReduction.of(
                        new ClimbReduction.Climb(700, altitudeFt, temperatureC, trueKt, massKg),
                        new Wing(10.5, 7.2, e),
                        STANDARD_KG)
                .standardFtPerMin();
    }

    @Test
    void contributionsByHand() {
        UncertaintyBudget budget = new ClimbBudget(1, 5, 50, 2).of(AT, WING, STANDARD_KG, 690, 8, 6);
        assertThat(budget.unit()).isEqualTo("ft/min");
        assertThat(contribution(budget, "Scatter of the climbs")).isEqualTo(8);
        // (m/m_s) R ΔT/T_s, to which the little that induced drag feels of the density is added
        double standardK = StandardAtmosphere.temperatureK(4000 * StandardAtmosphere.METRES_PER_FOOT);
        assertThat(contribution(budget, "Temperature")).isCloseTo(700 * 2 / standardK * 540 / 560, within(0.2));
        ClimbReduction reduced = ClimbReduction.of(
                new ClimbReduction.Climb(
                        700,
                        4000,
                        12,
                        Airspeeds.ofCalibrated(60, StandardAtmosphere.at(4000, 12.0))
                                .trueAirspeedKt(),
                        540),
                WING,
                STANDARD_KG);
        // induced ∝ 1/e and, nearly, ∝ 1/V
        double induced = Math.abs(reduced.inducedFtPerMin());
        assertThat(contribution(budget, "Span efficiency"))
                .isCloseTo(induced / 0.8 * 0.15 / Math.sqrt(12), within(0.02 * induced));
        assertThat(contribution(budget, "Airspeed")).isCloseTo(induced / 60, within(0.05 * induced / 60));
        // R/m_s, and of the induced part 4 m/m_s over the difference of squares
        double byMass = reduced.tapelineFtPerMin() / 560 + induced * 2 * 540 / (560.0 * 560 - 540 * 540);
        assertThat(contribution(budget, "Mass")).isCloseTo(5 * byMass, within(0.01 * 5 * byMass));
    }

    @Test
    void propagationAgainstChance() {
        Well19937c chance = new Well19937c(13);
        double[] rates = new double[10_000];
        for (int i = 0; i < rates.length; i++) {
            rates[i] = rate(
                    4000 + 100 * chance.nextGaussian(),
                    12 + 2 * chance.nextGaussian(),
                    60 + chance.nextGaussian(),
                    540 + 8 * chance.nextGaussian(),
                    0.8 + 0.15 * (chance.nextDouble() - 0.5));
        }
        UncertaintyBudget budget = new ClimbBudget(1, 8, 100, 2).of(AT, WING, STANDARD_KG, 690, 0, 6);
        assertThat(Sample.of(rates).standardDeviation()).isCloseTo(budget.combined(), within(0.03 * budget.combined()));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new ClimbBudget(-1, 0, 1e9, 0).of(AT, WING, STANDARD_KG, 690, 0, 6))
                .isInstanceOfSatisfying(
                        InvalidInputException.class,
                        e -> assertThat(e.problems()).extracting("field").containsExactly("airspeedKt", "altitudeFt"));
    }
}
