package org.vanewright.engineering.flighttest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.flighttest.UncertaintyBudget.Contribution;
import org.vanewright.engineering.inference.Sample;

class StallBudgetTest {
    private static final List<StallPoint> POINTS = List.of(
            new StallPoint(42, 480, 1, null), new StallPoint(43, 480, 1, null), new StallPoint(44, 480, 1, null));

    private static UncertaintyBudget budget(StallBudget inputs) {
        return inputs.of(POINTS, StallReduction.of(POINTS, 480, null));
    }

    @Test
    void contributionsByHand() {
        UncertaintyBudget budget = budget(new StallBudget(2, 0.8, 10, 0.05));
        assertThat(budget.value()).isCloseTo(43, within(1e-12));
        assertThat(budget.contributions().stream().map(Contribution::name))
                .containsExactly("Scatter of the stalls", "Reading", "Calibration", "Mass", "Load factor");
        // 1/√3; 2/√12; 0.8; 43/960 · 10; 43/2 · 0.05
        double[] expected = {1 / Math.sqrt(3), 2 / Math.sqrt(12), 0.8, 430.0 / 960, 43 * 0.025};
        double squares = 0;
        for (int i = 0; i < expected.length; i++) {
            assertThat(budget.contributions().get(i).standardUncertainty()).isCloseTo(expected[i], within(1e-12));
            squares += expected[i] * expected[i];
        }
        assertThat(budget.combined()).isCloseTo(Math.sqrt(squares), within(1e-12));
        assertThat(budget.contributions().stream().mapToDouble(budget::share).sum())
                .isCloseTo(1, within(1e-12));
    }

    /** JCGM 100:2008, G.2b: with one cause estimated from repeats ν_eff = ν u_c⁴/u⁴. */
    @Test
    void degreesOfFreedomFollowTheGuide() {
        UncertaintyBudget budget = budget(new StallBudget(0, 0.8, 0, 0));
        double ratio = budget.combined() * Math.sqrt(3);
        assertThat(budget.effectiveDegreesOfFreedom()).isCloseTo(2 * Math.pow(ratio, 4), within(1e-9));
        assertThat(budget.interval(0.95).contains(43)).isTrue();
        assertThat(budget.interval(0.95).halfWidth()).isGreaterThan(1.96 * budget.combined());
    }

    /**
     * JCGM 100:2008, H.1.6 and table H.1: end-gauge, contributions 25, 9.7, 2.9 and 16.6 nm with 18, 25.6, 50 and 2 degrees
     * of freedom give 32 nm with 16 (from memory; further ones are zero to first order).
     */
    @Test
    void theSumAgainstTheGuidesEndGauge() {
        UncertaintyBudget gauge = new UncertaintyBudget(
                0,
                "nm",
                List.of(
                        new Contribution("standard", 25, 18, ""),
                        new Contribution("differences", 9.7, 25.6, ""),
                        new Contribution("expansion", 2.9, 50, ""),
                        new Contribution("temperature", 16.6, 2, "")));
        assertThat(gauge.combined()).isCloseTo(31.7, within(0.1));
        assertThat(gauge.effectiveDegreesOfFreedom()).isBetween(16.0, 18.0);
    }

    /** Speeds drawn with every cause at once scatter by what the budget says. */
    @Test
    void propagationAgainstChance() {
        Well19937c chance = new Well19937c(5);
        double[] speeds = new double[20_000];
        for (int i = 0; i < speeds.length; i++) {
            double read = 43 + 0.8 * chance.nextGaussian() + 2 * (chance.nextDouble() - 0.5);
            double mass = 480 + 10 * chance.nextGaussian();
            double factor = 1 + 0.02 * chance.nextGaussian();
            speeds[i] = new StallPoint(read, mass, factor, null).standardAirspeedKt(480);
        }
        UncertaintyBudget budget = budget(new StallBudget(2, 0.8, 10, 0.02));
        double scatter = budget.contributions().get(0).standardUncertainty();
        double systematic = Math.sqrt(budget.combined() * budget.combined() - scatter * scatter);
        assertThat(Sample.of(speeds).standardDeviation()).isCloseTo(systematic, within(0.02 * systematic));
    }

    @Test
    void oneStallHasNoScatterToShow() {
        List<StallPoint> one = POINTS.subList(0, 1);
        UncertaintyBudget budget = new StallBudget(1, 0, 0, 0).of(one, StallReduction.of(one, 480, null));
        assertThat(budget.contributions()).hasSize(4);
        assertThat(budget.effectiveDegreesOfFreedom()).isInfinite();
        assertThat(budget.interval(0.95).halfWidth()).isCloseTo(1.96 / Math.sqrt(12), within(1e-3));
        UncertaintyBudget nothing = new StallBudget(0, 0, 0, 0).of(one, StallReduction.of(one, 480, null));
        assertThat(nothing.interval(0.95).halfWidth()).isZero();
        assertThat(nothing.share(nothing.contributions().get(0))).isZero();
    }

    @Test
    void namesWhatIsWrong() {
        assertThatThrownBy(() -> budget(new StallBudget(-1, Double.NaN, 1e9, 3)))
                .hasMessageContaining("resolutionKt")
                .hasMessageContaining("calibrationKt")
                .hasMessageContaining("massKg")
                .hasMessageContaining("loadFactor");
    }
}
