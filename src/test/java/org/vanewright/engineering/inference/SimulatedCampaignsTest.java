package org.vanewright.engineering.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.vanewright.engineering.inference.Simulation.values;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.stat.inference.TTest;
import org.junit.jupiter.api.Test;

/** Campaigns with a known truth: what 95 % and 5 % promise is what comes out. */
class SimulatedCampaignsTest {
    private static final double CHANGE_KT = -1.5;
    private static final Simulation CAMPAIGNS = new Simulation(1_903, 4_000);

    private static Comparison independent(RandomGenerator chance, double change) {
        return Welch.compare(
                Sample.of(values(chance, 6, 44, 1.3)), Sample.of(values(chance, 8, 44 + change, 0.7)), 0.95);
    }

    private static Blocked blocked(RandomGenerator chance, double change) {
        List<double[]> blocks = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            double day = 3 * chance.nextGaussian();
            double[] block = values(chance, 3, 44 + day, 0.8);
            block[1] += change;
            blocks.add(block);
        }
        return Blocked.compare(blocks, 0.95);
    }

    @Test
    void welchsIntervalCoversTheTruth() {
        assertThat(CAMPAIGNS.fraction(c -> independent(c, CHANGE_KT).interval().contains(CHANGE_KT)))
                .isBetween(0.93, 0.97);
        assertThat(CAMPAIGNS.fraction(c -> independent(c, 0).pValue() < 0.05)).isBetween(0.03, 0.07);
    }

    @Test
    void theIntervalOfAMeanCoversTheTruth() {
        assertThat(CAMPAIGNS.fraction(
                        c -> Sample.of(values(c, 6, 44, 1.3)).meanInterval(0.95).contains(44)))
                .isBetween(0.93, 0.97);
    }

    @Test
    void theIntervalOfBlocksCoversTheTruthWhateverTheDay() {
        assertThat(CAMPAIGNS.fraction(c -> blocked(c, CHANGE_KT)
                        .againstBaseline()
                        .get(0)
                        .interval()
                        .contains(CHANGE_KT)))
                .isBetween(0.93, 0.97);
        assertThat(CAMPAIGNS.fraction(
                        c -> blocked(c, 0).againstBaseline().get(0).pValue() < 0.05))
                .isBetween(0.03, 0.07);
        assertThat(CAMPAIGNS.fraction(c -> blocked(c, 0).configurationsPValue() < 0.05))
                .isBetween(0.03, 0.07);
    }

    @Test
    void pairsCoverTheTruth() {
        assertThat(CAMPAIGNS.fraction(c -> {
                    double[] baseline = values(c, 7, 44, 2);
                    double[] modified = values(c, 7, CHANGE_KT, 0.9);
                    for (int i = 0; i < 7; i++) {
                        modified[i] += baseline[i];
                    }
                    return Paired.compare(baseline, modified, 0.95).interval().contains(CHANGE_KT);
                }))
                .isBetween(0.93, 0.97);
    }

    /** Any false alarm at all among three configurations that change nothing. */
    @Test
    void holmKeepsFalseAlarmsTogetherBelowTheirBound() {
        double any = CAMPAIGNS.fraction(
                c -> Holm.adjust(blocked(c, 0).againstBaseline()).stream().anyMatch(a -> a.adjustedPValue() < 0.05));
        assertThat(any).isBetween(0.02, 0.06);
    }

    private static boolean pooledSees(double[] baseline, double[] modified) {
        return new TTest().homoscedasticTTest(baseline, modified) < 0.05;
    }

    private static boolean welchSees(double[] baseline, double[] modified) {
        return Welch.compare(Sample.of(baseline), Sample.of(modified), 0.95).pValue() < 0.05;
    }

    private static double seen(int n, BiPredicate<double[], double[]> test) {
        return CAMPAIGNS.fraction(c -> test.test(values(c, n, 44, 1.2), values(c, n, 44 + CHANGE_KT, 1.2)));
    }

    /** One curve is that of the test with pooled scatter, the other that of Welch's. */
    @Test
    void thePowerCurveIsWhatSimulationSees() {
        SampleSize size = SampleSize.twoGroups(1.2, CHANGE_KT, 0.05, 0.8);
        for (int n : new int[] {3, 6, 10, 16}) {
            assertThat(seen(n, SimulatedCampaignsTest::pooledSees))
                    .as("%d each", n)
                    .isCloseTo(size.powerAt(n), within(0.02));
        }
        for (int n : new int[] {2, 3, 4, 6, 8, 12, 16}) {
            assertThat(seen(n, SimulatedCampaignsTest::welchSees))
                    .as("Welch, %d each", n)
                    .isCloseTo(size.welchPowerAt(n), within(0.02));
        }
    }

    @Test
    void thePowerOfPairsIsWhatSimulationSees() {
        SampleSize size = SampleSize.pairs(1.2, CHANGE_KT, 0.05, 0.8);
        for (int n : new int[] {4, 8}) {
            double seen = CAMPAIGNS.fraction(c -> Paired.compare(new double[n], values(c, n, CHANGE_KT, 1.2), 0.95)
                            .pValue()
                    < 0.05);
            assertThat(seen).as("%d pairs", n).isCloseTo(size.powerAt(n), within(0.02));
        }
    }

    @Test
    void aSeedFixesTheCampaigns() {
        Simulation again = new Simulation(1_903, 500);
        assertThat(again.fraction(c -> independent(c, 0).t() > 0))
                .isEqualTo(again.fraction(c -> independent(c, 0).t() > 0));
    }
}
