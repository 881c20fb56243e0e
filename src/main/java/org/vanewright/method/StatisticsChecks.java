package org.vanewright.method;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.ToDoubleFunction;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.vanewright.engineering.flow.PublishedCheck;
import org.vanewright.engineering.flow.PublishedCheck.HowKnown;
import org.vanewright.engineering.inference.Comparison;
import org.vanewright.engineering.inference.NoncentralT;
import org.vanewright.engineering.inference.Sample;
import org.vanewright.engineering.inference.SampleSize;
import org.vanewright.engineering.inference.Welch;

/** Comparisons, sample sizes and retention curves beside published figures. */
final class StatisticsChecks {
    private static final String GROUP = "Statistics";
    private static final String CARS = "miles per gallon, 249 and 79 cars";
    private static final String NIST = "NIST/SEMATECH e-Handbook of Statistical Methods, ";
    private static final String COHEN = "J. Cohen, Statistical Power Analysis for the Behavioral Sciences, 1988";
    private static final String NATRELLA = "M. G. Natrella, Experimental Statistics, NBS Handbook 91, 1963, table A-7";

    private StatisticsChecks() {}

    static List<PublishedCheck> list() {
        List<PublishedCheck> all = new ArrayList<>(comparisons());
        all.addAll(SurvivalChecks.list());
        all.addAll(MetaChecks.list());
        return List.copyOf(all);
    }

    private static List<PublishedCheck> comparisons() {
        return List.of(
                cars("Welch's t", Comparison::t, -12.94627, 1e-4),
                cars("Degrees of freedom", Comparison::degreesOfFreedom, 136.875, 1e-3),
                cars("Lower end of the 95 % interval", c -> c.interval().low(), -11.91524, 1e-4),
                check(
                        "Values of a sample, normal",
                        "change 1 σ, 5 % two-sided, power 90 %",
                        () -> SampleSize.pairs(1, 1, 0.05, 0.90).normalApproximation(),
                        10.507,
                        1e-3,
                        NIST + "7.2.2.2",
                        HowKnown.DERIVED),
                cohen(0.5, 64),
                cohen(0.8, 26),
                cohen(1.0, 17),
                tolerance(5, 4.203),
                tolerance(10, 2.911),
                tolerance(20, 2.396));
    }

    private static PublishedCheck cars(
            String quantity, ToDoubleFunction<Comparison> figure, double published, double tolerance) {
        return check(
                quantity,
                CARS,
                () -> figure.applyAsDouble(
                        Welch.compare(new Sample(79, 30.48101, 6.10771), new Sample(249, 20.14458, 6.41470), 0.95)),
                published,
                tolerance,
                NIST + "1.3.5.3",
                HowKnown.DERIVED);
    }

    private static PublishedCheck cohen(double effect, int perGroup) {
        return check(
                "Values of each group",
                "change " + effect + " σ, 5 % two-sided, power 80 %",
                () -> SampleSize.twoGroups(1, effect, 0.05, 0.8).perGroup(),
                perGroup,
                0,
                COHEN,
                HowKnown.FROM_MEMORY);
    }

    /** One-sided tolerance factors are quantiles of non-central t over √n. */
    private static PublishedCheck tolerance(int count, double factor) {
        double root = Math.sqrt(count);
        return check(
                "Non-central t below a tolerance factor",
                "n " + count + ", 95 % of all with confidence 95 %, factor " + factor,
                () -> NoncentralT.cumulative(
                        factor * root, count - 1, new NormalDistribution().inverseCumulativeProbability(0.95) * root),
                0.95,
                2e-4,
                NATRELLA,
                HowKnown.FROM_MEMORY);
    }

    static PublishedCheck check(
            String quantity,
            String conditions,
            DoubleSupplier computed,
            double published,
            double tolerance,
            String source,
            HowKnown howKnown) {
        return new PublishedCheck(
                GROUP, quantity, conditions, computed, published, tolerance, "", source, howKnown, null);
    }
}
