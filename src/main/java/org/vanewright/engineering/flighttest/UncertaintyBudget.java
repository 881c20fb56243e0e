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
 * @param value the figure
 * @param unit of it and of its uncertainties, such as {@code kt}
 * @param contributions in the order of their names' first mention, none negative
 */
public record UncertaintyBudget(double value, String unit, List<Contribution> contributions) {
    /**
     * One cause.
     *
     * @param name of the cause, for people
     * @param standardUncertainty what it adds to the figure, in its unit
     * @param degreesOfFreedom of its estimate; infinite where it was not estimated from repeats
     * @param how it was found
     */
    public record Contribution(String name, double standardUncertainty, double degreesOfFreedom, String how) {
        /** One that was not estimated from repeats. */
        static Contribution given(String name, double standardUncertainty, String how) {
            return new Contribution(name, standardUncertainty, Double.POSITIVE_INFINITY, how);
        }
    }

    public UncertaintyBudget {
        contributions = List.copyOf(contributions);
    }

    public double combined() {
        return Math.sqrt(contributions.stream()
                .mapToDouble(c -> c.standardUncertainty() * c.standardUncertainty())
                .sum());
    }

    /** Fraction of the variance that a contribution makes, 0 where there is none. */
    public double share(Contribution contribution) {
        double ratio = combined() > 0 ? contribution.standardUncertainty() / combined() : 0;
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
        double reach = combined() > 0 ? StudentT.twoSided(confidence, freedom) * combined() : 0;
        return new Interval(value - reach, value + reach);
    }
}
