package org.vanewright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.Comparison;
import org.vanewright.engineering.inference.Outliers;
import org.vanewright.engineering.inference.Sample;
import org.vanewright.engineering.inference.Welch;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/** Two configurations by Welch's test. */
public final class ComparisonCalculation {
    static final String METHOD =
            "Welch's t test of two independent samples whose scatter may differ, with Satterthwaite's degrees of freedom and"
                    + " the interval of the same t. Values that lie apart by Grubbs' test at 5 % are named and stay in.";
    static final List<String> SOURCES = List.of(
            "NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.5.3",
            "B. L. Welch, The Generalization of 'Student's' Problem when Several Different Population Variances are"
                    + " Involved, Biometrika 34, 1947 (from memory)");
    private static final int MOST_VALUES = 10_000;
    private static final double LARGEST = 1e9;
    private static final double USUAL_CONFIDENCE = 0.95;
    private static final int FEW = 5;

    private ComparisonCalculation() {}

    /**
     * @throws InvalidInputException fields {@code baseline…}, {@code modified…}, {@code confidence}: missing, too few, out of
     *     range, or without any scatter
     */
    public static ComparisonResult run(ComparisonRequest request) {
        Comparison c = compare(request);
        return new ComparisonResult(
                c.difference(),
                c.t(),
                c.degreesOfFreedom(),
                c.pValue(),
                List.of(c.interval().low(), c.interval().high()),
                false,
                METHOD,
                SOURCES,
                validity(request));
    }

    /** As {@link #run}, with what only pages show. */
    public static Comparison compare(ComparisonRequest request) {
        Checks checks = new Checks();
        double[] baseline = values(checks, "baseline", request.baseline());
        double[] modified = values(checks, "modified", request.modified());
        double confidence = Objects.requireNonNullElse(request.confidence(), USUAL_CONFIDENCE);
        checks.range("confidence", confidence, 0.5, 0.9999, "");
        checks.throwIfAny();
        return Welch.compare(Sample.of(baseline), Sample.of(modified), confidence);
    }

    private static double[] values(Checks checks, String field, @Nullable List<@Nullable Double> given) {
        String allowed = "2 to " + MOST_VALUES + " numbers";
        int count = given == null ? 0 : given.size();
        if (given == null || count < 2 || count > MOST_VALUES) {
            checks.require(false, field, given == null ? null : count + " numbers", allowed);
            return new double[0];
        }
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            Double value = given.get(i);
            if (checks.range(field + "[" + i + "]", value, -LARGEST, LARGEST, "") && value != null) {
                values[i] = value;
            }
        }
        return values;
    }

    /** Warnings about values that were compared. */
    public static List<String> validity(ComparisonRequest request) {
        Checks checks = new Checks();
        double[] baseline = values(checks, "baseline", request.baseline());
        double[] modified = values(checks, "modified", request.modified());
        List<String> validity = new ArrayList<>();
        if (Math.min(baseline.length, modified.length) < FEW) {
            validity.add("With fewer than five values of each, nobody can see whether they scatter normally, and the"
                    + " interval leans on it.");
        }
        apart(validity, "baseline", baseline);
        apart(validity, "modified", modified);
        return List.copyOf(validity);
    }

    private static void apart(List<String> validity, String name, double[] values) {
        for (int i : Outliers.marked(Outliers.Rule.GRUBBS, values)) {
            validity.add("Value " + (i + 1) + " of " + name + ", " + values[i] + ", lies apart by "
                    + Outliers.Rule.GRUBBS.words()
                    + ". It is included; leave it out only for a reason that was noted in"
                    + " flight.");
        }
    }
}
