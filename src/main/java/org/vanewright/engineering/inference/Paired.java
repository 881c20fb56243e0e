package org.vanewright.engineering.inference;

import java.util.stream.IntStream;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Values flown in pairs, such as one stall of each configuration in every flight: Student's t of the differences, with one
 * degree of freedom less than there are pairs. NIST/SEMATECH e-Handbook of Statistical Methods, section 7.3.1 (quoted
 * second-hand).
 */
public final class Paired {
    private Paired() {}

    /**
     * @param baseline two or more values
     * @param modified as many, in the order of the pairs
     * @throws InvalidInputException field {@code modified}: not as many, or all differences equal
     */
    public static Comparison compare(double[] baseline, double[] modified, double confidence) {
        if (baseline.length != modified.length) {
            throw refused(modified.length + " values", "as many values as baseline has, " + baseline.length);
        }
        Sample differences = Sample.of(IntStream.range(0, baseline.length)
                .mapToDouble(i -> modified[i] - baseline[i])
                .toArray());
        if (!(differences.meanVariance() > 0)) {
            throw refused("pairs that all differ by the same", "pairs whose differences scatter");
        }
        return Comparison.of(
                Comparison.Design.PAIRED,
                differences.mean(),
                differences.standardError(),
                baseline.length - 1,
                confidence,
                baseline.length,
                modified.length);
    }

    private static InvalidInputException refused(String value, String allowed) {
        return new InvalidInputException(new FieldProblem("modified", value, allowed));
    }
}
