package org.vanewright.engineering.inference;

import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Two independent samples whose scatter may differ:
 *
 * <pre>
 * t = (x̄₂ − x̄₁)/√(s₁²/n₁ + s₂²/n₂)        ν = (s₁²/n₁ + s₂²/n₂)² / [(s₁²/n₁)²/(n₁−1) + (s₂²/n₂)²/(n₂−1)]
 * </pre>
 *
 * NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.5.3; B. L. Welch, The Generalization of 'Student's' Problem
 * when Several Different Population Variances are Involved, Biometrika 34, 1947; F. E. Satterthwaite, An Approximate
 * Distribution of Estimates of Variance Components, Biometrics Bulletin 2, 1946 (both from memory).
 */
public final class Welch {
    private Welch() {}

    /**
     * @param confidence between 0 and 1
     * @throws InvalidInputException field {@code baseline}: neither sample scatters, so nothing can be said
     */
    public static Comparison compare(Sample baseline, Sample modified, double confidence) {
        double first = baseline.meanVariance();
        double second = modified.meanVariance();
        double sum = first + second;
        if (!(sum > 0)) {
            throw new InvalidInputException(new FieldProblem(
                    "baseline",
                    "values that are all equal, as those of modified are",
                    "values of which some differ, here or in modified; equal ones show the reading, not the scatter"));
        }
        double share = first / sum;
        double degreesOfFreedom =
                1 / (share * share / (baseline.count() - 1) + (1 - share) * (1 - share) / (modified.count() - 1));
        return Comparison.of(
                Comparison.Design.INDEPENDENT,
                modified.mean() - baseline.mean(),
                Math.sqrt(sum),
                degreesOfFreedom,
                confidence,
                baseline.count(),
                modified.count());
    }
}
