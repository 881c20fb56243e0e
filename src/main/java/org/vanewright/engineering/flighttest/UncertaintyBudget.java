package org.vanewright.engineering.flighttest;

import java.util.List;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.StudentT;

/**
 * What a figure owes its uncertainty to. Contributions are taken to be independent:
 *
 * <pre>
 * u_c² = Σ u_i²        ν_eff = u_c⁴ / Σ (u_i⁴/ν_i)
 * </pre>
 *
 * JCGM 100:2008, Guide to the Expression of Uncertainty in Measurement, equations 10 and G.2b.
 *
 * @param value the figure, kt
 * @param contributions in the order of their names' first mention, none negative
 */
public record UncertaintyBudget(double value, List<Contribution> contributions) {
    /**
     * One cause.
     *
     * @param name of the cause, for people
     * @param standardUncertaintyKt what it adds to the figure
     * @param degreesOfFreedom of its estimate; infinite where it was not estimated from repeats
     * @param how it was found
     */
    public record Contribution(String name, double standardUncertaintyKt, double degreesOfFreedom, String how) {}

    public UncertaintyBudget {
        contributions = List.copyOf(contributions);
    }

    public double combinedKt() {
        return Math.sqrt(contributions.stream()
                .mapToDouble(c -> c.standardUncertaintyKt() * c.standardUncertaintyKt())
                .sum());
    }

    /** Fraction of the variance that a contribution makes, 0 where there is none. */
    public double share(Contribution contribution) {
        double ratio = combinedKt() > 0 ? contribution.standardUncertaintyKt() / combinedKt() : 0;
        return ratio * ratio;
    }

    /** Infinite where nothing was estimated from repeats. */
    public double effectiveDegreesOfFreedom() {
        double sum = contributions.stream()
                .mapToDouble(c -> share(c) * share(c) / c.degreesOfFreedom())
                .sum();
        return 1 / sum;
    }

    /** The figure with its expanded uncertainty, by Student's t with the effective degrees of freedom. */
    public Interval interval(double confidence) {
        double freedom = Math.min(effectiveDegreesOfFreedom(), 1e6);
        double reach = combinedKt() > 0 ? StudentT.twoSided(confidence, freedom) * combinedKt() : 0;
        return new Interval(value - reach, value + reach);
    }
}
