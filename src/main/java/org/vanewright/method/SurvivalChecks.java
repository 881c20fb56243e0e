package org.vanewright.method;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import org.vanewright.engineering.flow.PublishedCheck;
import org.vanewright.engineering.flow.PublishedCheck.HowKnown;
import org.vanewright.engineering.inference.survival.Binomial;
import org.vanewright.engineering.inference.survival.CurveInterval;
import org.vanewright.engineering.inference.survival.KaplanMeier;
import org.vanewright.engineering.inference.survival.Lifetime;
import org.vanewright.engineering.inference.survival.LogRank;

/** Retention curves and binomial limits beside published figures. */
final class SurvivalChecks {
    private static final String FREIREICH = "E. J. Freireich et al., Blood 21, 1963: weeks of remission (data)";
    private static final String KALBFLEISCH =
            "J. D. Kalbfleisch and R. L. Prentice, The Statistical Analysis of Failure Time Data, 2nd ed. 2002; "
                    + FREIREICH;
    private static final String NIST = "NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1";
    private static final String HANLEY = "J. A. Hanley and A. Lippman-Hand, JAMA 249, 1983";
    private static final String TREATED = "Remissions of 21 treated";

    private SurvivalChecks() {}

    static List<PublishedCheck> list() {
        return List.of(
                treated("Share left at 6 weeks", c -> c.survivalAt(6), 0.857143, 1e-6, HowKnown.FROM_MEMORY),
                treated("Share left at 10 weeks", c -> c.survivalAt(10), 0.752941, 1e-6, HowKnown.FROM_MEMORY),
                treated("Share left at 23 weeks", c -> c.survivalAt(23), 0.448179, 1e-6, HowKnown.FROM_MEMORY),
                treated(
                        "Standard error at 10 weeks",
                        c -> step(c, 10).standardError(),
                        0.096350,
                        1e-6,
                        HowKnown.FROM_MEMORY),
                treated(
                        "Standard error at 23 weeks",
                        c -> step(c, 23).standardError(),
                        0.134591,
                        1e-6,
                        HowKnown.FROM_MEMORY),
                treated("Lower log-log limit at 10 weeks", c -> step(c, 10).low(), 0.5032, 1e-4, HowKnown.DERIVED),
                treated("Upper log-log limit at 10 weeks", c -> step(c, 10).high(), 0.8894, 1e-4, HowKnown.DERIVED),
                treated("Median, weeks", c -> median(c), 23, 0, HowKnown.SECOND_HAND),
                check(
                        "Median, weeks",
                        "Remissions of 21 on placebo",
                        () -> median(KaplanMeier.of(placebo(), 0.95)),
                        8,
                        0,
                        FREIREICH,
                        HowKnown.SECOND_HAND),
                check(
                        "Log-rank statistic",
                        "Both groups of 21",
                        SurvivalChecks::logRank,
                        16.79,
                        0.005,
                        KALBFLEISCH,
                        HowKnown.FROM_MEMORY),
                check(
                        "Exact lower limit",
                        "4 of 20, 90 %",
                        () -> Binomial.clopperPearson(4, 20, 0.90).low(),
                        0.071354,
                        1e-5,
                        NIST,
                        HowKnown.FROM_MEMORY),
                check(
                        "Exact upper limit",
                        "4 of 20, 90 %",
                        () -> Binomial.clopperPearson(4, 20, 0.90).high(),
                        0.401029,
                        1e-5,
                        NIST,
                        HowKnown.FROM_MEMORY),
                none(30, 0.095034),
                none(100, 0.029513));
    }

    private static PublishedCheck none(int of, double limit) {
        return check(
                "Upper limit of none",
                "0 of " + of + ", 95 % one-sided",
                () -> Binomial.upperLimitOfNone(of, 0.95),
                limit,
                1e-6,
                HANLEY,
                HowKnown.FROM_MEMORY);
    }

    private interface Figure {
        double of(KaplanMeier curve);
    }

    private static PublishedCheck treated(
            String quantity, Figure figure, double published, double tolerance, HowKnown known) {
        return check(
                quantity,
                TREATED,
                () -> figure.of(KaplanMeier.of(treated(), 0.95, CurveInterval.LOG_LOG)),
                published,
                tolerance,
                KALBFLEISCH,
                known);
    }

    private static KaplanMeier.Step step(KaplanMeier curve, double weeks) {
        KaplanMeier.Step step = curve.stepAt(weeks);
        if (step == null) {
            throw new IllegalStateException("the data have losses before");
        }
        return step;
    }

    private static double median(KaplanMeier curve) {
        Double median = curve.medianHours();
        return median == null ? Double.NaN : median;
    }

    private static double logRank() {
        LogRank test = LogRank.of(List.of(treated(), placebo()));
        return test == null ? Double.NaN : test.chiSquared();
    }

    private static List<Lifetime> treated() {
        List<Lifetime> all = lifetimes(true, 6, 6, 6, 7, 10, 13, 16, 22, 23);
        all.addAll(lifetimes(false, 6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35));
        return all;
    }

    private static List<Lifetime> placebo() {
        return lifetimes(true, 1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23);
    }

    private static List<Lifetime> lifetimes(boolean lost, double... weeks) {
        List<Lifetime> lifetimes = new ArrayList<>();
        for (double each : weeks) {
            lifetimes.add(new Lifetime(each, lost));
        }
        return lifetimes;
    }

    private static PublishedCheck check(
            String quantity,
            String conditions,
            DoubleSupplier computed,
            double published,
            double tolerance,
            String source,
            HowKnown howKnown) {
        return StatisticsChecks.check(quantity, conditions, computed, published, tolerance, source, howKnown);
    }
}
