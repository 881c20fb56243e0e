package org.vanewright.engineering.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SampleSizeTest {
    /** J. Cohen, Statistical Power Analysis for the Behavioral Sciences, 2nd edition, 1988 (from memory). */
    @ParameterizedTest
    @CsvSource({"0.5, 64, 62.79, .80146", "0.8, 26, 24.53, .80749", "1.0, 17, 15.70, .80704"})
    void groupsAgainstCohensTables(double effect, int perGroup, double normal, double power) {
        SampleSize size = SampleSize.twoGroups(1, effect, 0.05, 0.8);
        assertThat(size.perGroup()).isEqualTo(perGroup);
        assertThat(size.normalApproximation()).isCloseTo(normal, within(0.005));
        assertThat(size.powerAt(perGroup)).isCloseTo(power, within(5e-6));
        assertThat(size.powerAt(perGroup - 1)).isLessThan(0.8);
    }

    /** R's manual of power.t.test: n 20, difference 1, deviation 1 has power 0.8689528 (from memory). */
    @Test
    void powerAgainstAStatisticsPackagesManual() {
        double critical = StudentT.twoSided(0.95, 38);
        double upper = 1 - NoncentralT.cumulative(critical, 38, Math.sqrt(10));
        assertThat(upper).as("that manual leaves the far tail out").isCloseTo(0.8689528, within(5e-8));
        assertThat(Power.of(Math.sqrt(10), 38, 0.05))
                .isCloseTo(upper, within(1e-6))
                .isGreaterThan(upper);
        // the same manual: 22.02110 values for a power of 0.90, so 23
        assertThat(SampleSize.twoGroups(1, 1, 0.05, 0.9).perGroup()).isEqualTo(23);
    }

    /** NIST/SEMATECH e-Handbook, 7.2.2.2: N = (z + z)² (σ/Δ)² of one sample; its table has 11 for a change of 1 σ, 13 at β 0.05. */
    @Test
    void pairsAgainstTheHandbooksFormula() {
        assertThat(SampleSize.pairs(1, 1, 0.05, 0.90).normalApproximation()).isCloseTo(10.507, within(1e-3));
        assertThat(SampleSize.pairs(1, 1, 0.05, 0.95).normalApproximation()).isCloseTo(12.995, within(1e-3));
        // exact, with the scatter unknown, takes two or three more
        assertThat(SampleSize.pairs(1, 1, 0.05, 0.90).perGroup()).isEqualTo(13);
    }

    /**
     * One-sided tolerance factors are quantiles of non-central t: k = t'(γ; n − 1, z_p √n)/√n. Values of M. G. Natrella,
     * Experimental Statistics, NBS Handbook 91, 1963, table A-7 (from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "5, .90, .95, 3.407",
        "5, .95, .95, 4.203",
        "10, .90, .95, 2.355",
        "10, .95, .95, 2.911",
        "10, .99, .95, 3.981",
        "20, .95, .95, 2.396"
    })
    void noncentralTAgainstToleranceFactors(int n, double content, double confidence, double factor) {
        double z = new NormalDistribution().inverseCumulativeProbability(content);
        double root = Math.sqrt(n);
        assertThat(NoncentralT.cumulative((factor - 5e-4) * root, n - 1, z * root))
                .isLessThan(confidence);
        assertThat(NoncentralT.cumulative((factor + 5e-4) * root, n - 1, z * root))
                .isGreaterThan(confidence);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1.5, 2, 3.8, 10, 200, 1e4})
    void withoutNoncentralityItIsStudents(double freedom) {
        for (double t : new double[] {-700, -12.7, -2, -1e-3, 0, 0.5, 3, 40, 6e5}) {
            assertThat(NoncentralT.cumulative(t, freedom, 0))
                    .as("t %s", t)
                    .isCloseTo(new TDistribution(freedom).cumulativeProbability(t), within(1e-10));
        }
    }

    /** For ν = 1 and t = 0 and for very many degrees of freedom it is normal. */
    @Test
    void limitsOfTheNoncentralT() {
        NormalDistribution normal = new NormalDistribution();
        assertThat(NoncentralT.cumulative(0, 1, 1.3)).isCloseTo(normal.cumulativeProbability(-1.3), within(1e-13));
        assertThat(NoncentralT.cumulative(3, 1e12, 1.3)).isCloseTo(normal.cumulativeProbability(1.7), within(1e-11));
        assertThat(NoncentralT.cumulative(2, 5, 60)).isBetween(0.0, 1e-12);
        assertThat(NoncentralT.cumulative(-2, 5, -60)).isBetween(1 - 1e-12, 1.0);
    }

    @Test
    void theCurveRisesThroughThePowerAskedFor() {
        SampleSize size = SampleSize.twoGroups(1.2, -1.5, 0.05, 0.8);
        assertThat(size.curve(40))
                .hasSizeBetween(6, 40)
                .isSortedAccordingTo((a, b) -> Double.compare(a.power(), b.power()));
        assertThat(size.curve(40).get(0).perGroup()).isEqualTo(2);
        assertThat(SampleSize.twoGroups(1, 0.01, 0.05, 0.8).curve(40)).hasSizeBetween(30, 40);
    }

    @ParameterizedTest
    @CsvSource({
        "0, 1, .05, .8, standardDeviation",
        "NaN, 1, .05, .8, standardDeviation",
        "1, 0, .05, .8, difference",
        "1, Infinity, .05, .8, difference",
        "1, 0.0001, .05, .8, difference",
        "1e9, 1e-9, .05, .8, difference",
        "1, 1, 0, .8, significance",
        "1, 1, .05, 1, power",
        "1, 1, .5, .4, power"
    })
    void namesWhatIsWrong(double deviation, double difference, double significance, double power, String field) {
        assertThatThrownBy(() -> SampleSize.twoGroups(deviation, difference, significance, power))
                .hasMessageStartingWith(field);
    }

    @Test
    void aHugeChangeTakesTwoEach() {
        assertThat(SampleSize.twoGroups(1e-9, 1e9, 1e-6, 0.999999).perGroup()).isEqualTo(2);
        assertThat(SampleSize.pairs(1e-9, 1e9, 1e-6, 0.999999).perGroup()).isEqualTo(2);
    }

    /** For many values n tends to the normal one, plus z²/4 for the unknown scatter, less what the far tail gives. */
    @Test
    void aSmallChangeTakesAsManyAsTheNormalDistributionSays() {
        SampleSize size = SampleSize.twoGroups(1, 0.005, 0.05, 0.8);
        assertThat(size.normalApproximation()).isCloseTo(627_910.38, within(0.01));
        assertThat((double) size.perGroup()).isCloseTo(size.normalApproximation(), within(3.0));
    }
}
