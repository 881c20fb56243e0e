package org.vanewright.engineering.inference.meta;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds whatever the studies found; seeded. */
class RandomEffectsPropertiesTest {
    private static RandomEffects summary(List<Effect> effects, TauEstimator estimator) {
        return RandomEffects.of(effects, estimator, 0.95);
    }

    static Stream<Arguments> studies() {
        Random random = new Random(20_260_301);
        List<Arguments> cases = new ArrayList<>();
        for (TauEstimator estimator : TauEstimator.values()) {
            for (int n = 0; n < 25; n++) {
                cases.add(Arguments.of(estimator, effects(random, 2 + random.nextInt(30), random.nextDouble() * 3)));
            }
        }
        return cases.stream();
    }

    private static List<Effect> effects(Random random, int count, double tau) {
        List<Effect> effects = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double error = Math.exp(random.nextGaussian());
            effects.add(new Effect(-2 + tau * random.nextGaussian() + error * random.nextGaussian(), error));
        }
        return effects;
    }

    @ParameterizedTest
    @EnumSource(TauEstimator.class)
    void equalEffectsDifferByNothing(TauEstimator estimator) {
        RandomEffects equal =
                summary(List.of(new Effect(-1.5, 0.3), new Effect(-1.5, 0.7), new Effect(-1.5, 2)), estimator);
        assertThat(equal.heterogeneity().tauSquared()).isZero();
        assertThat(equal.heterogeneity().iSquared()).isZero();
        assertThat(equal.heterogeneity().tauSquaredInterval().low()).isZero();
        assertThat(equal.mean()).isCloseTo(-1.5, within(1e-12));
        assertThat(equal.mean()).isEqualTo(equal.fixedMean());
        assertThat(equal.standardError()).isEqualTo(equal.fixedError());
        assertThat(equal.adjustedError()).as("never below that").isEqualTo(equal.standardError());
    }

    @ParameterizedTest
    @MethodSource("studies")
    void theirOrderDoesNotMatter(TauEstimator estimator, List<Effect> effects) {
        List<Effect> other = new ArrayList<>(effects);
        Collections.shuffle(other, new Random(7));
        RandomEffects one = summary(effects, estimator);
        RandomEffects two = summary(other, estimator);
        assertThat(two.mean()).isCloseTo(one.mean(), within(1e-9));
        assertThat(two.adjustedError()).isCloseTo(one.adjustedError(), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("studies")
    void anotherUnitGivesTheSameInThatUnit(TauEstimator estimator, List<Effect> effects) {
        double knot = 0.514444;
        RandomEffects kt = summary(effects, estimator);
        RandomEffects mps = summary(
                effects.stream()
                        .map(e -> new Effect(e.value() * knot, e.standardError() * knot))
                        .toList(),
                estimator);
        double tolerance = 1e-8 * (1 + Math.abs(kt.mean()));
        assertThat(mps.mean()).isCloseTo(kt.mean() * knot, within(tolerance));
        assertThat(mps.interval().low()).isCloseTo(kt.interval().low() * knot, within(1e-7));
        assertThat(mps.heterogeneity().tau()).isCloseTo(kt.heterogeneity().tau() * knot, within(1e-6));
        assertThat(mps.heterogeneity().q()).isCloseTo(kt.heterogeneity().q(), within(1e-7));
    }

    @ParameterizedTest
    @MethodSource("studies")
    void aShiftOfAllShiftsTheMeanAndNothingElse(TauEstimator estimator, List<Effect> effects) {
        RandomEffects here = summary(effects, estimator);
        RandomEffects there = summary(
                effects.stream()
                        .map(e -> new Effect(e.value() + 10, e.standardError()))
                        .toList(),
                estimator);
        assertThat(there.mean()).isCloseTo(here.mean() + 10, within(1e-8));
        assertThat(there.heterogeneity().tauSquared())
                .isCloseTo(here.heterogeneity().tauSquared(), within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("studies")
    void theNumbersHangTogether(TauEstimator estimator, List<Effect> effects) {
        RandomEffects all = summary(effects, estimator);
        assertThat(all.interval().contains(all.mean())).isTrue();
        assertThat(all.interval().halfWidth())
                .isGreaterThanOrEqualTo(all.normalInterval().halfWidth());
        assertThat(all.standardError()).isGreaterThanOrEqualTo(all.fixedError());
        assertThat(all.mean())
                .isBetween(
                        effects.stream().mapToDouble(Effect::value).min().orElseThrow() - 1e-9,
                        effects.stream().mapToDouble(Effect::value).max().orElseThrow() + 1e-9);
        assertThat(all.heterogeneity().iSquared()).isBetween(0.0, 1.0);
        assertThat(all.heterogeneity().pValue()).isBetween(0.0, 1.0);
        if (effects.size() > 2) {
            assertThat(Objects.requireNonNull(all.prediction()).halfWidth())
                    .isGreaterThanOrEqualTo(all.normalInterval().halfWidth());
        }
    }

    /** No τ² near it has a greater restricted likelihood: the slope's zero is that of its largest maximum. */
    @ParameterizedTest
    @MethodSource("studies")
    void likelihoodIsLargestThere(TauEstimator estimator, List<Effect> effects) {
        double found = TauEstimator.REML.estimate(effects);
        double best = restricted(found, effects);
        for (double factor : new double[] {0, 0.01, 0.5, 0.9, 0.999, 1.001, 1.1, 2, 100}) {
            assertThat(restricted(found * factor, effects)).isLessThanOrEqualTo(best + 1e-9);
        }
        for (double other = 1e-4; other < 1e3; other *= 1.5) {
            assertThat(restricted(other, effects)).isLessThanOrEqualTo(best + 1e-9);
        }
    }

    private static double restricted(double tauSquared, List<Effect> effects) {
        double sum = 0;
        double total = 0;
        double logs = 0;
        for (Effect e : effects) {
            double v = e.standardError() * e.standardError() + tauSquared;
            sum += 1 / v;
            total += e.value() / v;
            logs += Math.log(v);
        }
        double mean = total / sum;
        double q = 0;
        for (Effect e : effects) {
            q += Math.pow(e.value() - mean, 2) / (e.standardError() * e.standardError() + tauSquared);
        }
        return -(logs + Math.log(sum) + q) / 2;
    }

    /** With many studies of a known spread the estimates find it; the Q-profile's interval holds it. */
    @ParameterizedTest
    @EnumSource(TauEstimator.class)
    void aKnownSpreadIsFound(TauEstimator estimator) {
        RandomEffects many = summary(effects(new Random(11), 2000, 1.5), estimator);
        assertThat(many.heterogeneity().tau()).isCloseTo(1.5, within(0.1));
        assertThat(many.heterogeneity().tauSquaredInterval().contains(2.25)).isTrue();
        assertThat(many.mean()).isCloseTo(-2, within(0.15));
    }

    /** In 400 sets of six campaigns with τ = 1 the Hartung-Knapp interval holds the mean about as often as it says. */
    @ParameterizedTest
    @EnumSource(TauEstimator.class)
    void theIntervalHoldsTheTruthAsOftenAsItSays(TauEstimator estimator) {
        Random random = new Random(5);
        int held = 0;
        for (int n = 0; n < 400; n++) {
            held += summary(effects(random, 6, 1), estimator).interval().contains(-2) ? 1 : 0;
        }
        assertThat(held / 400.0).isBetween(0.92, 1.0);
    }
}
