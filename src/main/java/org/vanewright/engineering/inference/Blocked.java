package org.vanewright.engineering.inference;

import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.FDistribution;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Randomised complete blocks: every block, such as a flight, holds one value of each configuration. What a whole block has
 * in common, such as the day's air, drops out; configurations are compared by the scatter that is left,
 *
 * <pre>
 * S² = Σ (y_ij − ȳ_i − ȳ_j + ȳ)² / ((b − 1)(k − 1)),        standard error of a difference √(2 S²/b)
 * </pre>
 *
 * with b blocks and k configurations. D. C. Montgomery, Design and Analysis of Experiments, chapter "Randomized Complete
 * Block Design" (from memory).
 *
 * @param againstBaseline the second configuration and those behind it, each against the first
 * @param errorVariance S²
 * @param degreesOfFreedom (b − 1)(k − 1)
 * @param configurationsF mean square of the configurations over S²
 * @param configurationsPValue of that F
 */
public record Blocked(
        List<Comparison> againstBaseline,
        double errorVariance,
        int degreesOfFreedom,
        double configurationsF,
        double configurationsPValue) {
    /**
     * @param blocks two or more, each with the same two or more configurations in the same order, the baseline first
     * @throws InvalidInputException fields {@code blocks}, {@code blocks[i]}: too few, incomplete, or without scatter
     */
    public static Blocked compare(List<double[]> blocks, double confidence) {
        int configurations = checkedWidth(blocks);
        int count = blocks.size();
        double[] means = IntStream.range(0, configurations)
                .mapToDouble(
                        j -> blocks.stream().mapToDouble(b -> b[j]).average().orElseThrow())
                .toArray();
        double all = mean(means);
        double error = blocks.stream().mapToDouble(b -> left(b, means, all)).sum();
        double between = 0;
        for (double mean : means) {
            between += count * (mean - all) * (mean - all);
        }
        int freedom = (count - 1) * (configurations - 1);
        double variance = error / freedom;
        if (!(variance > 0)) {
            throw new InvalidInputException(
                    new FieldProblem("blocks", "no scatter beside blocks and configurations", "values that scatter"));
        }
        double f = between / (configurations - 1) / variance;
        double standardError = Math.sqrt(2 * variance / count);
        List<Comparison> comparisons = IntStream.range(1, configurations)
                .mapToObj(j -> Comparison.of(
                        Comparison.Design.BLOCKED,
                        means[j] - means[0],
                        standardError,
                        freedom,
                        confidence,
                        count,
                        count))
                .toList();
        double p = 1 - new FDistribution(configurations - 1, freedom).cumulativeProbability(f);
        return new Blocked(comparisons, variance, freedom, f, p);
    }

    private static int checkedWidth(List<double[]> blocks) {
        Checks checks = new Checks();
        checks.require(blocks.size() >= 2, "blocks", blocks.size() + " blocks", "two blocks or more");
        checks.throwIfAny();
        int configurations = blocks.get(0).length;
        checks.require(configurations >= 2, "blocks[0]", configurations + " values", "two configurations or more");
        for (int i = 1; i < blocks.size(); i++) {
            int values = blocks.get(i).length;
            checks.require(
                    values == configurations,
                    "blocks[" + i + "]",
                    values + " values",
                    "a value of each of the " + configurations + " configurations");
        }
        checks.throwIfAny();
        return configurations;
    }

    /** Squares of what neither the block nor the configurations explain. */
    private static double left(double[] block, double[] means, double all) {
        double own = mean(block);
        double sum = 0;
        for (int j = 0; j < block.length; j++) {
            double rest = block[j] - own - (means[j] - all);
            sum += rest * rest;
        }
        return sum;
    }

    private static double mean(double[] values) {
        return IntStream.range(0, values.length)
                .mapToDouble(i -> values[i])
                .average()
                .orElseThrow();
    }
}
