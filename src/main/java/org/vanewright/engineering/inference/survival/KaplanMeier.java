package org.vanewright.engineering.inference.survival;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.Interval;

/**
 * The product-limit curve of right-censored lifetimes: S(t) = Π (1 − dᵢ/nᵢ) over the times tᵢ ≤ t of losses, dᵢ lost of
 * nᵢ at risk, with Greenwood's standard error S·√(Σ dᵢ/(nᵢ(nᵢ − dᵢ))). Who is censored at a time of losses is at risk
 * there. E. L. Kaplan and P. Meier, Nonparametric Estimation from Incomplete Observations, J. Am. Stat. Assoc. 53, 1958;
 * M. Greenwood, The Natural Duration of Cancer, 1926 (both from memory).
 *
 * @param count of the observations, at least 1
 * @param longestHours of any of them; nothing is known beyond
 * @param steps one for each time of losses, rising; empty where nothing was lost
 */
public record KaplanMeier(int count, double longestHours, List<Step> steps) {
    private static final double HALF = 0.5 + 1e-12;

    public KaplanMeier {
        steps = List.copyOf(steps);
    }

    /**
     * A time of losses.
     *
     * @param hours when
     * @param atRisk in place just before
     * @param lost then
     * @param survival just after
     * @param standardError of it by Greenwood; 0 where nothing is left
     * @param low lower limit
     * @param high upper limit; where nothing is left, the one before, or the exact binomial one without any before
     */
    public record Step(
            double hours, int atRisk, int lost, double survival, double standardError, double low, double high) {}

    /** The curve with log-log limits. */
    public static KaplanMeier of(List<Lifetime> lifetimes, double confidence) {
        return of(lifetimes, confidence, CurveInterval.USUAL);
    }

    /**
     * @param lifetimes one or more
     * @param confidence of the limits at each time by itself, between 0 and 1
     * @param scale on which the limits are symmetric
     */
    public static KaplanMeier of(List<Lifetime> lifetimes, double confidence, CurveInterval scale) {
        if (lifetimes.isEmpty()) {
            throw new IllegalArgumentException("a curve needs one observation");
        }
        double quantile = new NormalDistribution().inverseCumulativeProbability(0.5 + confidence / 2);
        List<Step> steps = new ArrayList<>();
        double survival = 1;
        double sum = 0;
        for (RiskSet set : RiskSet.of(lifetimes)) {
            int left = set.atRisk() - set.lost();
            survival *= (double) left / set.atRisk();
            sum += left == 0 ? 0 : set.lost() / ((double) set.atRisk() * left);
            double error = survival * Math.sqrt(sum);
            Interval limits = left == 0
                    ? new Interval(0, highestOfNone(steps, set.atRisk(), confidence))
                    : scale.around(survival, error, quantile);
            steps.add(new Step(set.hours(), set.atRisk(), set.lost(), survival, error, limits.low(), limits.high()));
        }
        double longest = lifetimes.stream()
                .map(Lifetime::hours)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        return new KaplanMeier(lifetimes.size(), longest, steps);
    }

    /** A curve never rises, so an upper limit of earlier holds later. */
    private static double highestOfNone(List<Step> before, int atRisk, double confidence) {
        return before.isEmpty()
                ? Binomial.clopperPearson(0, atRisk, confidence).high()
                : before.get(before.size() - 1).high();
    }

    /** The curve at a time: that of the last step not after it. */
    public double survivalAt(double hours) {
        Step step = stepAt(hours);
        return step == null ? 1 : step.survival();
    }

    /** The last step not after a time; null before the first. */
    public @Nullable Step stepAt(double hours) {
        return steps.stream()
                .filter(s -> s.hours() <= hours)
                .reduce((a, b) -> b)
                .orElse(null);
    }

    /** The first time at which half or fewer are left; null where more always are. */
    public @Nullable Double medianHours() {
        return steps.stream()
                .filter(s -> s.survival() <= HALF)
                .map(Step::hours)
                .findFirst()
                .orElse(null);
    }

    /**
     * Where the limits of the curve leave one half in doubt. R. Brookmeyer and J. Crowley, A Confidence Interval for the
     * Median Survival Time, Biometrics 38, 1982 (from memory), with this curve's own limits.
     *
     * @param low null where not even the lower limit comes down to one half
     * @param high null where the upper limit never does
     */
    public record MedianInterval(
            @Nullable Double low, @Nullable Double high) {}

    public MedianInterval medianInterval() {
        return new MedianInterval(
                steps.stream()
                        .filter(s -> s.low() <= HALF)
                        .map(Step::hours)
                        .findFirst()
                        .orElse(null),
                steps.stream()
                        .filter(s -> s.high() <= HALF)
                        .map(Step::hours)
                        .findFirst()
                        .orElse(null));
    }

    /** How many are in place just before a time, of these lifetimes. */
    public static int atRisk(List<Lifetime> lifetimes, double hours) {
        return (int) lifetimes.stream().filter(l -> l.hours() >= hours).count();
    }
}
