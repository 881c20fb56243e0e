package org.vanewright.engineering.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;

/** Ratios of a difference to a mean that is itself uncertain. */
class RelativeChangeTest {
    private static Comparison comparison(Comparison.Design design, double difference, double error) {
        return Comparison.of(design, difference, error, 12, 0.95, 8, 8);
    }

    @Test
    void aMeanThatIsKnownGivesTheSimpleRatio() {
        Comparison c = comparison(Comparison.Design.INDEPENDENT, -1.8, 0.4);
        RelativeChange change = Objects.requireNonNull(RelativeChange.of(c, 45, 0));
        assertThat(change.ratio()).isCloseTo(-0.04, within(1e-12));
        assertThat(change.interval().low()).isCloseTo(c.interval().low() / 45, within(1e-12));
        assertThat(change.interval().high()).isCloseTo(c.interval().high() / 45, within(1e-12));
    }

    /** The ends are where d − r b lies t of its own standard errors from 0, which is the theorem. */
    @Test
    void theEndsAreWhereTheTheoremPutsThem() {
        double t = StudentT.twoSided(0.95, 12);
        for (Comparison.Design design : List.of(Comparison.Design.INDEPENDENT, Comparison.Design.BLOCKED)) {
            Comparison c = comparison(design, -1.8, 0.4);
            RelativeChange change = Objects.requireNonNull(RelativeChange.of(c, 45, 0.3));
            double covariance = design == Comparison.Design.INDEPENDENT ? -0.09 : -0.08;
            for (double r :
                    new double[] {change.interval().low(), change.interval().high()}) {
                double variance = 0.16 - 2 * r * covariance + r * r * 0.09;
                assertThat(Math.abs(-1.8 - r * 45)).isCloseTo(t * Math.sqrt(variance), within(1e-9));
            }
            assertThat(change.interval().contains(change.ratio())).isTrue();
        }
    }

    /** First order: V(d/b) = (V_dd − 2 r V_db + r² V_bb)/b². */
    @Test
    void aSmallUncertaintyAgreesWithTheDeltaMethod() {
        Comparison c = comparison(Comparison.Design.INDEPENDENT, -1.8, 0.4);
        RelativeChange change = Objects.requireNonNull(RelativeChange.of(c, 45, 0.25));
        double r = -0.04;
        double delta = Math.sqrt(0.16 + 2 * r * 0.0625 + r * r * 0.0625) / 45;
        assertThat(change.interval().halfWidth()).isCloseTo(StudentT.twoSided(0.95, 12) * delta, within(2e-5));
        assertThat(change.standardError()).isCloseTo(delta, within(1e-12));
    }

    @Test
    void whereTheMeanMayBeNothingThereIsNoRatio() {
        assertThat(RelativeChange.of(comparison(Comparison.Design.INDEPENDENT, 3, 1), 2, 1))
                .isNull();
    }

    /** Rates of climb that scatter by a quarter of what they are, with and without days in common: 4,000 campaigns each. */
    @Test
    void theIntervalCoversTheTruth() {
        Well19937c chance = new Well19937c(77);
        int[] held = new int[2];
        for (int run = 0; run < 4_000; run++) {
            double[] baseline = new double[8];
            double[] modified = new double[8];
            List<double[]> blocks = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                baseline[i] = 400 + 100 * chance.nextGaussian();
                modified[i] = 320 + 100 * chance.nextGaussian();
                double day = 40 * chance.nextGaussian();
                blocks.add(
                        new double[] {400 + day + 60 * chance.nextGaussian(), 320 + day + 60 * chance.nextGaussian()});
            }
            held[0] += holds(Welch.compare(Sample.of(baseline), Sample.of(modified), 0.95), Sample.of(baseline));
            held[1] += holds(
                    Blocked.compare(blocks, 0.95).againstBaseline().get(0),
                    Sample.of(blocks.stream().mapToDouble(b -> b[0]).toArray()));
        }
        assertThat(held[0] / 4_000.0).isBetween(0.93, 0.97);
        assertThat(held[1] / 4_000.0).isBetween(0.93, 0.97);
    }

    private static int holds(Comparison comparison, Sample baseline) {
        RelativeChange change = RelativeChange.of(comparison, baseline.mean(), baseline.standardError());
        return change != null && change.interval().contains(-0.2) ? 1 : 0;
    }
}
