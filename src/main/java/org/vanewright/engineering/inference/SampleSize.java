package org.vanewright.engineering.inference;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * How many repeats show a change.
 *
 * <p>Exact: the least n at which a two-sided t test has the power asked for, by the non-central t distribution; two groups
 * have 2 n − 2 degrees of freedom and δ = Δ/(σ √(2/n)), pairs have n − 1 and δ = Δ √n/σ. Approximately, by the normal
 * distribution, n = 2 (z₁₋α/₂ + z_power)² (σ/Δ)², and half of that for pairs.
 *
 * <p>J. Cohen, Statistical Power Analysis for the Behavioral Sciences, 2nd edition, 1988, chapter 2 (from memory);
 * NIST/SEMATECH e-Handbook of Statistical Methods, section 7.2.2.2.
 *
 * @param design pairs or two independent groups
 * @param standardDeviation σ of single values; for pairs, of the differences
 * @param difference Δ, the change worth finding; its sign does not matter
 * @param significance of the two-sided test
 * @param power wanted
 * @param perGroup values of each configuration
 * @param normalApproximation the same by the normal distribution, not rounded
 */
public record SampleSize(
        Comparison.Design design,
        double standardDeviation,
        double difference,
        double significance,
        double power,
        int perGroup,
        double normalApproximation) {
    /** More than anybody flies; a question that needs more is refused. */
    public static final int MOST = 1_000_000;

    private static final double LARGEST = 1e9;

    /**
     * Point of the curve of power over repeats.
     *
     * @param perGroup values of each configuration
     * @param power chance to see the change
     */
    public record CurvePoint(int perGroup, double power) {}

    /**
     * Two groups flown independently.
     *
     * @throws InvalidInputException fields {@code standardDeviation}, {@code difference}, {@code significance}, {@code
     *     power}: out of range, or so small a difference that more than {@value #MOST} values were needed
     */
    public static SampleSize twoGroups(double standardDeviation, double difference, double significance, double power) {
        return of(Comparison.Design.INDEPENDENT, standardDeviation, difference, significance, power);
    }

    /**
     * Pairs.
     *
     * @param standardDeviation of the differences within pairs
     * @throws InvalidInputException as {@link #twoGroups}
     */
    public static SampleSize pairs(double standardDeviation, double difference, double significance, double power) {
        return of(Comparison.Design.PAIRED, standardDeviation, difference, significance, power);
    }

    private static SampleSize of(
            Comparison.Design design, double standardDeviation, double difference, double significance, double power) {
        check(standardDeviation, difference, significance, power);
        double effect = Math.abs(difference) / standardDeviation;
        NormalDistribution normal = new NormalDistribution();
        double sum =
                -normal.inverseCumulativeProbability(significance / 2) + normal.inverseCumulativeProbability(power);
        double groups = design == Comparison.Design.PAIRED ? 1 : 2;
        double approximation = groups * sum * sum / (effect * effect);
        IntToDoubleFunction powerAt = n -> powerAt(design, n, effect, significance);
        if (!(approximation < MOST) || powerAt.applyAsDouble(MOST) < power) {
            throw new InvalidInputException(new FieldProblem(
                    "difference",
                    Double.toString(difference),
                    "a change that " + MOST + " values of each configuration show at this scatter"));
        }
        return new SampleSize(
                design,
                standardDeviation,
                difference,
                significance,
                power,
                least(powerAt, power, (int) approximation),
                approximation);
    }

    private static void check(double standardDeviation, double difference, double significance, double power) {
        Checks checks = new Checks();
        checks.range("standardDeviation", standardDeviation, 1e-9, LARGEST, "");
        checks.require(
                Double.isFinite(difference) && Math.abs(difference) >= 1e-9 && Math.abs(difference) <= LARGEST,
                "difference",
                difference,
                "a number other than 0, at most 1000000000");
        checks.range("significance", significance, 1e-6, 0.5, "");
        if (checks.range("power", power, 0.01, 0.999999, "")) {
            checks.require(!(power <= significance), "power", power, "more than the significance");
        }
        checks.throwIfAny();
    }

    /** Power grows with n, so doubling and halving find the least n. */
    private static int least(IntToDoubleFunction powerAt, double power, int guess) {
        int low = 1;
        int high = Math.max(2, guess);
        while (powerAt.applyAsDouble(high) < power) {
            low = high;
            high = Math.min(MOST, 2 * high);
        }
        while (high - low > 1) {
            int middle = low + (high - low) / 2;
            if (powerAt.applyAsDouble(middle) < power) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    private static double powerAt(Comparison.Design design, int n, double effect, double significance) {
        return design == Comparison.Design.PAIRED
                ? Power.of(effect * Math.sqrt(n), n - 1, significance)
                : Power.of(effect * Math.sqrt(n / 2.0), 2.0 * n - 2, significance);
    }

    /** Chance to see the change with so many values of each configuration, two or more. */
    public double powerAt(int count) {
        return powerAt(design, count, Math.abs(difference) / standardDeviation, significance);
    }

    /**
     * The same where two groups are compared by Welch's test, which asks nothing of their scatters and gives a little away
     * where values are few; pairs have no such test and keep their own power.
     */
    public double welchPowerAt(int count) {
        double effect = Math.abs(difference) / standardDeviation;
        return design == Comparison.Design.PAIRED
                ? powerAt(count)
                : Power.ofWelch(effect * Math.sqrt(count / 2.0), count, significance);
    }

    /** From two values up to about twice as many as are needed, at most {@code most} points. */
    public List<CurvePoint> curve(int most) {
        int last = Math.max(6, 2 * perGroup);
        int step = Math.max(1, (last - 2 + most - 1) / most);
        List<CurvePoint> points = new ArrayList<>();
        for (int n = 2; n <= last; n += step) {
            points.add(new CurvePoint(n, powerAt(n)));
        }
        return List.copyOf(points);
    }
}
