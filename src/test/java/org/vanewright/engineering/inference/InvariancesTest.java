package org.vanewright.engineering.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/** What must not matter: the unit, the zero, the order of values, which of two is called the baseline. */
class InvariancesTest {
    private static double[] some(Random chance) {
        double size = Math.pow(10, -6 + 12 * chance.nextDouble());
        double[] values = new double[2 + chance.nextInt(12)];
        Arrays.setAll(values, i -> size * (5 + chance.nextGaussian()));
        return values;
    }

    private static double[] mapped(double[] values, DoubleUnaryOperator change) {
        return Arrays.stream(values).map(change).toArray();
    }

    private static double[] shuffled(double[] values, Random chance) {
        List<Double> list = new ArrayList<>(Arrays.stream(values).boxed().toList());
        Collections.shuffle(list, chance);
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static Comparison welch(double[] baseline, double[] modified) {
        return Welch.compare(Sample.of(baseline), Sample.of(modified), 0.95);
    }

    private static void assertNear(double actual, double expected) {
        assertThat(actual).isCloseTo(expected, within(1e-7 * Math.max(1e-9, Math.abs(expected))));
    }

    @RepeatedTest(200)
    void welchKnowsNoUnitNoZeroAndNoOrder(RepetitionInfo info) {
        Random chance = new Random(info.getCurrentRepetition());
        double[] a = some(chance);
        double[] b = some(chance);
        Comparison c = welch(a, b);
        assertThat(new double[] {c.difference(), c.standardError(), c.t(), c.degreesOfFreedom(), c.pValue()})
                .satisfies(numbers ->
                        Arrays.stream(numbers).forEach(n -> assertThat(n).isFinite()));
        assertThat(c.pValue()).isBetween(0.0, 1.0);
        assertThat(c.interval().contains(c.difference())).isTrue();
        assertThat(c.degreesOfFreedom())
                .isBetween(Math.min(a.length, b.length) - 1 - 1e-9, a.length + b.length - 2 + 1e-9);
        double scale = 1 / 3.6;
        Comparison scaled = welch(mapped(a, x -> scale * x), mapped(b, x -> scale * x));
        assertNear(scaled.t(), c.t());
        assertNear(scaled.difference(), scale * c.difference());
        assertNear(scaled.smallestVisibleChange(0.8), scale * c.smallestVisibleChange(0.8));
        double shift = Math.max(Math.abs(a[0]), Math.abs(b[0]));
        Comparison shifted = welch(mapped(a, x -> x + shift), mapped(b, x -> x + shift));
        assertThat(shifted.pValue()).isCloseTo(c.pValue(), within(1e-6));
        Comparison mixed = welch(shuffled(a, chance), shuffled(b, chance));
        assertNear(mixed.t(), c.t());
        Comparison turned = welch(b, a);
        assertNear(turned.t(), -c.t());
        assertNear(turned.interval().low(), -c.interval().high());
    }

    @RepeatedTest(100)
    void blocksKnowNoOrderAndNoDay(RepetitionInfo info) {
        Random chance = new Random(info.getCurrentRepetition());
        int configurations = 2 + chance.nextInt(4);
        List<double[]> blocks = new ArrayList<>();
        for (int i = 0; i < 2 + chance.nextInt(6); i++) {
            double[] block = new double[configurations];
            Arrays.setAll(block, j -> 40 + chance.nextGaussian());
            blocks.add(block);
        }
        Comparison c = Blocked.compare(blocks, 0.95).againstBaseline().get(0);
        List<double[]> moved = new ArrayList<>();
        for (double[] block : blocks) {
            double day = 10 * chance.nextGaussian();
            moved.add(mapped(block, x -> x + day));
        }
        Collections.shuffle(moved, chance);
        Comparison other = Blocked.compare(moved, 0.95).againstBaseline().get(0);
        assertThat(other.t()).isCloseTo(c.t(), within(1e-9 * (1 + Math.abs(c.t()))));
        assertThat(other.pValue()).isBetween(0.0, 1.0).isCloseTo(c.pValue(), within(1e-9));
    }

    @RepeatedTest(100)
    void sampleSizesKnowNoUnitAndGrowWithTheQuestion(RepetitionInfo info) {
        Random chance = new Random(info.getCurrentRepetition());
        double deviation = Math.pow(10, -4 + 8 * chance.nextDouble());
        double difference = deviation * Math.pow(10, -1.5 + 3 * chance.nextDouble());
        double significance = Math.pow(10, -5 + 4.5 * chance.nextDouble());
        double power = significance + (0.999 - significance) * chance.nextDouble();
        SampleSize size = SampleSize.twoGroups(deviation, difference, significance, power);
        assertThat(size.powerAt(size.perGroup())).isGreaterThanOrEqualTo(power);
        if (size.perGroup() > 2) {
            assertThat(size.powerAt(size.perGroup() - 1)).isLessThan(power);
        }
        assertThat(SampleSize.twoGroups(2 * deviation, -2 * difference, significance, power)
                        .perGroup())
                .isEqualTo(size.perGroup());
        assertThat(SampleSize.twoGroups(deviation, difference / 2, significance, power)
                        .perGroup())
                .isGreaterThanOrEqualTo(size.perGroup());
    }
}
