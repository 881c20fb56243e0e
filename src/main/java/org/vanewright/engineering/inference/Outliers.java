package org.vanewright.engineering.inference;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.stat.descriptive.rank.Percentile;

/** Values that lie apart. They are marked for a person to look at and stay in every calculation. */
public final class Outliers {
    private static final double SIGNIFICANCE = 0.05;
    private static final double FENCE = 1.5;

    /** How a value comes to be marked. */
    public enum Rule {
        /**
         * The value farthest from the mean, where G = |x − x̄|/s is above its critical value at 5 %, two-sided. Three values
         * or more. NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.5.17.1 (from memory).
         */
        GRUBBS("Grubbs' test at 5 %"),
        /**
         * Beyond 1.5 interquartile ranges from the quartiles, which are interpolated between the values at (n − 1) p. J. W.
         * Tukey, Exploratory Data Analysis, 1977 (from memory).
         */
        TUKEY_FENCES("Tukey's fences at 1.5 interquartile ranges");

        private final String words;

        Rule(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    private Outliers() {}

    /** Places of the marked values, ascending. */
    public static List<Integer> marked(Rule rule, double... values) {
        if (values.length < 3) {
            return List.of();
        }
        return switch (rule) {
            case GRUBBS -> byGrubbs(values);
            case TUKEY_FENCES -> byFences(values);
        };
    }

    private static List<Integer> byGrubbs(double[] values) {
        Sample sample = Sample.of(values);
        int farthest = 0;
        for (int i = 1; i < values.length; i++) {
            if (Math.abs(values[i] - sample.mean()) > Math.abs(values[farthest] - sample.mean())) {
                farthest = i;
            }
        }
        double away = Math.abs(values[farthest] - sample.mean());
        return away > grubbsCritical(values.length) * sample.standardDeviation() ? List.of(farthest) : List.of();
    }

    /** (n − 1)/√n √(t²/(n − 2 + t²)) with t exceeded to one side with probability 0.05/(2 n) at n − 2 degrees of freedom. */
    static double grubbsCritical(int count) {
        double t = StudentT.twoSided(1 - SIGNIFICANCE / count, count - 2);
        return (count - 1) / Math.sqrt(count) * Math.sqrt(t * t / (count - 2 + t * t));
    }

    private static List<Integer> byFences(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        Percentile quantile = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
        double lower = quantile.evaluate(sorted, 25);
        double upper = quantile.evaluate(sorted, 75);
        double reach = FENCE * (upper - lower);
        return IntStream.range(0, values.length)
                .filter(i -> values[i] < lower - reach || values[i] > upper + reach)
                .boxed()
                .toList();
    }
}
