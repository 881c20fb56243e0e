package org.vanewright.load;

import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/** Chance for one document, from the seed, its kind and its number alone, so that any may be made without the others. */
final class Chance {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private final RandomGenerator random;

    Chance(long seed, String kind, int number) {
        random = new SplittableRandom(((seed * 31 + kind.hashCode()) * 1_000_003 + number) * GOLDEN);
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    /** True so often of a hundred. */
    boolean percent(int of) {
        return random.nextInt(100) < of;
    }

    <T> T of(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    /** A whole multiple of the step. */
    double between(double low, double high, double step) {
        long steps = Math.round((high - low) / step);
        return rounded(low + step * random.nextInt((int) steps + 1));
    }

    double normal(double mean, double deviation) {
        return mean + deviation * random.nextGaussian();
    }

    /** As it would be written down: without the noise of binary fractions. */
    static double rounded(double figure) {
        return Math.round(figure * 1000) / 1000.0;
    }

    static double tenth(double figure) {
        return Math.round(figure * 10) / 10.0;
    }
}
