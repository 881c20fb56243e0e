package org.vanewright.engineering.inference.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.engineering.inference.Simulation;

class KaplanMeierTest {
    @Test
    void theDataAreThoseThatWerePublished() {
        List<Lifetime> treated = Remissions.treated();
        List<Lifetime> placebo = Remissions.placebo();
        assertThat(treated).hasSize(21);
        assertThat(placebo).hasSize(21);
        assertThat(treated.stream().mapToDouble(Lifetime::hours).sum()).isEqualTo(359);
        assertThat(placebo.stream().mapToDouble(Lifetime::hours).sum()).isEqualTo(182);
    }

    /** Kalbfleisch and Prentice; Cox and Oakes (from memory to three decimals, worked out again beyond). */
    @ParameterizedTest
    @CsvSource({
        "6, 21, .857143, .076360",
        "7, 17, .806723, .086935",
        "10, 15, .752941, .096350",
        "13, 12, .690196, .106815",
        "16, 11, .627451, .114054",
        "22, 7, .537815, .128234",
        "23, 6, .448179, .134591"
    })
    void shareAndErrorAgainstThePublishedTable(double weeks, int atRisk, double survival, double error) {
        KaplanMeier curve = KaplanMeier.of(Remissions.treated(), 0.95);
        KaplanMeier.Step step = Objects.requireNonNull(curve.stepAt(weeks));
        assertThat(step.atRisk()).isEqualTo(atRisk);
        assertThat(step.survival()).isCloseTo(survival, within(1e-6));
        assertThat(step.standardError()).isCloseTo(error, within(1e-6));
        assertThat(curve.survivalAt(weeks + 0.5)).isEqualTo(step.survival());
        assertThat(curve.steps()).hasSize(7);
        assertThat(curve.longestHours()).isEqualTo(35);
    }

    /** D. R. Cox and D. Oakes, table 1.1 (first values read in a published copy). */
    @ParameterizedTest
    @CsvSource({
        "1, .905",
        "2, .810",
        "3, .762",
        "4, .667",
        "5, .571",
        "8, .381",
        "11, .286",
        "12, .190",
        "15, .143",
        "17, .095",
        "22, .048",
        "23, 0"
    })
    void thePlaceboGroupAgainstThePublishedTable(double weeks, double survival) {
        assertThat(KaplanMeier.of(Remissions.placebo(), 0.95).survivalAt(weeks)).isCloseTo(survival, within(5.1e-4));
    }

    /** Limits at 10 weeks, worked out by hand from the published share and error. */
    @ParameterizedTest
    @CsvSource({"PLAIN, .5641, .9418", "LOG, .5859, .9676", "LOG_LOG, .5032, .8894"})
    void limitsOnEachScale(CurveInterval scale, double low, double high) {
        KaplanMeier.Step step = Objects.requireNonNull(
                KaplanMeier.of(Remissions.treated(), 0.95, scale).stepAt(10));
        assertThat(step.low()).isCloseTo(low, within(1e-4));
        assertThat(step.high()).isCloseTo(high, within(1e-4));
    }

    /** A statistics package prints medians 8 (4 to 12) and 23 (16 to none) with limits on the log scale (read in a copy). */
    @Test
    void mediansWithTheirLimits() {
        KaplanMeier placebo = KaplanMeier.of(Remissions.placebo(), 0.95, CurveInterval.LOG);
        assertThat(placebo.medianHours()).isEqualTo(8);
        assertThat(placebo.medianInterval()).isEqualTo(new KaplanMeier.MedianInterval(4.0, 12.0));
        KaplanMeier treated = KaplanMeier.of(Remissions.treated(), 0.95, CurveInterval.LOG);
        assertThat(treated.medianHours()).isEqualTo(23);
        assertThat(treated.medianInterval()).isEqualTo(new KaplanMeier.MedianInterval(16.0, null));
    }

    @Test
    void withoutCensoringItIsTheShareLeftAndItsBinomialError() {
        KaplanMeier curve = KaplanMeier.of(Remissions.placebo(), 0.95);
        for (KaplanMeier.Step step : curve.steps()) {
            double share = (step.atRisk() - step.lost()) / 21.0;
            assertThat(step.survival()).isCloseTo(share, within(1e-12));
            assertThat(step.standardError()).isCloseTo(Math.sqrt(share * (1 - share) / 21), within(1e-12));
        }
        KaplanMeier.Step last = curve.steps().get(curve.steps().size() - 1);
        assertThat(last.low()).isZero();
        assertThat(last.high())
                .isEqualTo(curve.steps().get(curve.steps().size() - 2).high());
    }

    @Test
    void nothingLostHasNoStepAndAllLostAtOnceHasItsExactLimit() {
        KaplanMeier none = KaplanMeier.of(Remissions.lifetimes(false, 5, 6), 0.95);
        assertThat(none.steps()).isEmpty();
        assertThat(none.survivalAt(6)).isEqualTo(1);
        assertThat(none.medianHours()).isNull();
        KaplanMeier.Step all = KaplanMeier.of(Remissions.lifetimes(true, 5, 5, 5), 0.95)
                .steps()
                .get(0);
        assertThat(all.high()).isCloseTo(1 - Math.cbrt(0.025), within(1e-9));
        assertThat(all.standardError()).isZero();
        assertThatIllegalArgumentException().isThrownBy(() -> KaplanMeier.of(List.of(), 0.95));
        assertThatIllegalArgumentException().isThrownBy(() -> new Lifetime(Double.NaN, true));
    }

    @ParameterizedTest
    @CsvSource({"1", "2", "3", "4", "5"})
    void everyCurveFallsBetweenItsLimits(long seed) {
        RandomGenerator chance = new Well19937c(seed);
        for (int run = 0; run < 100; run++) {
            List<Lifetime> lifetimes = new ArrayList<>();
            for (int i = 0; i <= chance.nextInt(30); i++) {
                lifetimes.add(new Lifetime(chance.nextInt(12), chance.nextBoolean()));
            }
            double before = 1;
            for (KaplanMeier.Step step : KaplanMeier.of(lifetimes, 0.9).steps()) {
                assertThat(step.survival())
                        .isBetween(step.low() - 1e-12, step.high() + 1e-12)
                        .isLessThan(before);
                assertThat(step.low()).isBetween(0.0, 1.0);
                assertThat(step.high()).isBetween(0.0, 1.0);
                before = step.survival();
            }
        }
    }

    /** Simulated: 60 exponential lifetimes with mean 100, censored evenly up to 150; ±3 standard errors of 2,000 runs. */
    @Test
    void logLogLimitsCoverAsOftenAsTheySay() {
        double truth = Math.exp(-0.6);
        double covered = new Simulation(41, 2_000).fraction(chance -> {
            List<Lifetime> lifetimes = new ArrayList<>();
            for (int i = 0; i < 60; i++) {
                double loss = -100 * Math.log(1 - chance.nextDouble());
                double end = 150 * chance.nextDouble();
                lifetimes.add(new Lifetime(Math.min(loss, end), loss <= end));
            }
            KaplanMeier.Step step = KaplanMeier.of(lifetimes, 0.95).stepAt(60);
            return step != null && step.low() <= truth && truth <= step.high();
        });
        assertThat(covered).isBetween(0.935, 0.968);
    }
}
