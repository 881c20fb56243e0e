package org.vanewright.engineering.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.stat.inference.TTest;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.InvalidInputException;

class ComparisonTest {
    private static final double[] FIRST = {20.3, 22.1, 21.9};
    private static final double[] SECOND = {18.9, 20.3, 19};

    /** NIST/SEMATECH e-Handbook, 1.3.5.3: miles per gallon of 249 and 79 cars; unequal variances recomputed from there. */
    @Test
    void welchAgainstTheHandbooksCars() {
        Comparison c = Welch.compare(new Sample(79, 30.48101, 6.10771), new Sample(249, 20.14458, 6.41470), 0.95);
        assertThat(c.t()).isCloseTo(-12.94627, within(1e-4));
        assertThat(c.degreesOfFreedom()).isCloseTo(136.875, within(1e-3));
        assertThat(c.pValue()).isCloseTo(1.57e-25, within(1e-27));
        assertThat(c.interval().low()).isCloseTo(-11.91524, within(1e-4));
        assertThat(c.interval().high()).isCloseTo(-8.75762, within(1e-4));
    }

    /** A database's function reference prints t and p of these six values. */
    @Test
    void welchOfThreeAndThree() {
        Comparison c = Welch.compare(Sample.of(SECOND), Sample.of(FIRST), 0.95);
        assertThat(c.t()).isCloseTo(2.7988719532211235, within(1e-9));
        assertThat(c.pValue()).isCloseTo(0.051807360348581945, within(1e-9));
        assertThat(c.degreesOfFreedom()).isCloseTo(3.79990, within(1e-5));
        assertThat(c.interval().low()).isCloseTo(-0.026294, within(1e-6));
        assertThat(c.interval().high()).isCloseTo(4.092961, within(1e-6));
    }

    @Test
    void agreesWithTheLibrarysTests() {
        Comparison welch = Welch.compare(Sample.of(FIRST), Sample.of(SECOND), 0.95);
        assertThat(welch.pValue()).isCloseTo(new TTest().tTest(FIRST, SECOND), within(1e-12));
        Comparison paired = Paired.compare(FIRST, SECOND, 0.95);
        assertThat(paired.pValue()).isCloseTo(new TTest().pairedTTest(FIRST, SECOND), within(1e-12));
    }

    /** D. C. Montgomery, Design and Analysis of Experiments: flicks of vascular grafts, six batches (from memory). */
    private static final List<double[]> GRAFTS = List.of(
            new double[] {90.3, 92.5, 85.5, 82.5},
            new double[] {89.2, 89.5, 90.8, 89.5},
            new double[] {98.2, 90.6, 89.6, 85.6},
            new double[] {93.9, 94.7, 86.2, 87.4},
            new double[] {87.4, 87.0, 88.0, 78.9},
            new double[] {97.9, 95.8, 93.4, 90.7});

    @Test
    void blocksAgainstThePublishedExample() {
        Blocked b = Blocked.compare(GRAFTS, 0.95);
        assertThat(b.degreesOfFreedom()).isEqualTo(15);
        assertThat(b.errorVariance()).isCloseTo(7.33, within(0.005));
        assertThat(b.configurationsF()).isCloseTo(8.11, within(0.005));
        assertThat(b.configurationsPValue()).isCloseTo(0.0019, within(5e-5));
    }

    @Test
    void blocksAgainstARegressionOnBlocksAndConfigurations() {
        double[] y = new double[24];
        double[][] x = new double[24][8];
        for (int i = 0; i < 24; i++) {
            int block = i / 4;
            int configuration = i % 4;
            y[i] = GRAFTS.get(block)[configuration];
            if (configuration > 0) {
                x[i][configuration - 1] = 1;
            }
            if (block > 0) {
                x[i][2 + block] = 1;
            }
        }
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.newSampleData(y, x);
        Blocked b = Blocked.compare(GRAFTS, 0.95);
        for (int j = 1; j < 4; j++) {
            Comparison c = b.againstBaseline().get(j - 1);
            assertThat(c.difference()).isCloseTo(regression.estimateRegressionParameters()[j], within(1e-9));
            assertThat(c.standardError())
                    .isCloseTo(regression.estimateRegressionParametersStandardErrors()[j], within(1e-9));
        }
    }

    @Test
    void twoConfigurationsInBlocksAreThePairedTest() {
        List<double[]> blocks = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            blocks.add(new double[] {FIRST[i], SECOND[i]});
        }
        Comparison blocked = Blocked.compare(blocks, 0.95).againstBaseline().get(0);
        Comparison paired = Paired.compare(FIRST, SECOND, 0.95);
        assertThat(blocked.pValue()).isCloseTo(paired.pValue(), within(1e-12));
        assertThat(blocked.interval().low()).isCloseTo(paired.interval().low(), within(1e-9));
    }

    /** Worked by hand from the rule: 4 × 0.005, then 3 × 0.01, then 2 × 0.03, and 0.06 kept for the last. */
    @Test
    void holmsRuleByHand() {
        assertThat(Holm.adjustedPValues(0.01, 0.04, 0.03, 0.005))
                .containsExactly(new double[] {0.03, 0.06, 0.06, 0.02}, within(1e-15));
    }

    @Test
    void jointIntervalsContainTheSingleOnes() {
        Blocked b = Blocked.compare(GRAFTS, 0.95);
        assertThat(Holm.adjust(b.againstBaseline())).hasSize(3).allSatisfy(a -> {
            assertThat(a.adjustedPValue()).isGreaterThanOrEqualTo(a.comparison().pValue());
            assertThat(a.jointInterval().low())
                    .isLessThan(a.comparison().interval().low());
            assertThat(a.jointInterval().high())
                    .isGreaterThan(a.comparison().interval().high());
        });
    }

    /** NIST/SEMATECH e-Handbook, 1.3.5.17.1, mass spectrometer: G = 2.4687 against 2.032 marks 245.57 (from memory). */
    @Test
    void grubbsAgainstTheHandbooksExample() {
        double[] values = {199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57};
        Sample sample = Sample.of(values);
        assertThat((245.57 - sample.mean()) / sample.standardDeviation()).isCloseTo(2.4687, within(1e-4));
        // the critical value there is for one side
        assertThat(Outliers.grubbsCritical(8)).isCloseTo(2.126, within(1e-3));
        assertThat(Outliers.marked(Outliers.Rule.GRUBBS, values)).containsExactly(7);
        assertThat(Outliers.marked(Outliers.Rule.TUKEY_FENCES, values)).containsExactly(7);
    }

    @Test
    void nothingIsMarkedWhereNothingLiesApart() {
        for (Outliers.Rule rule : Outliers.Rule.values()) {
            assertThat(Outliers.marked(rule, 41, 42, 43, 44, 45)).isEmpty();
            assertThat(Outliers.marked(rule, 41, 99)).isEmpty();
            assertThat(Outliers.marked(rule, 42, 42, 42, 42)).isEmpty();
            assertThat(rule.words()).isNotBlank();
        }
    }

    @Test
    void equalValuesAreRefusedByName() {
        Sample flat = Sample.of(42, 42, 42);
        assertThatThrownBy(() -> Welch.compare(flat, flat, 0.95))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("baseline");
        assertThatThrownBy(() -> Paired.compare(FIRST, FIRST, 0.95)).hasMessageContaining("modified");
        assertThatThrownBy(() -> Paired.compare(FIRST, new double[] {1, 2}, 0.95))
                .hasMessageContaining("as many values");
        assertThatThrownBy(() -> Blocked.compare(List.of(FIRST, FIRST), 0.95)).hasMessageContaining("blocks");
        assertThatThrownBy(() -> Blocked.compare(List.of(FIRST, new double[] {1, 2}), 0.95))
                .hasMessageContaining("blocks[1]");
        assertThatThrownBy(() -> Blocked.compare(List.of(FIRST), 0.95)).hasMessageContaining("two blocks");
        assertThatThrownBy(() -> Blocked.compare(List.of(new double[] {1}, new double[] {1}), 0.95))
                .hasMessageContaining("blocks[0]");
        // one that scatters is enough
        assertThat(Welch.compare(flat, Sample.of(FIRST), 0.95).degreesOfFreedom())
                .isEqualTo(2);
    }

    /** The smallest visible change put back into the power of the test. */
    @Test
    void theSmallestVisibleChangeHasThePowerItClaims() {
        Comparison c = Welch.compare(Sample.of(FIRST), Sample.of(SECOND), 0.95);
        double change = c.smallestVisibleChange(0.8);
        assertThat(Power.of(change / c.standardError(), c.degreesOfFreedom(), 0.05))
                .isCloseTo(0.8, within(1e-9));
    }
}
