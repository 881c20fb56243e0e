package org.vanewright.engineering.inference.survival;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.vanewright.engineering.inference.Interval;

/**
 * The curve of greatest likelihood through losses that are only known to lie between two inspections. B. W. Turnbull, The
 * Empirical Distribution Function with Arbitrarily Grouped, Censored and Truncated Data, J. R. Stat. Soc. B 38, 1976 (from
 * memory): masses on the intervals of {@link TurnbullIntervals} are set to their expectation given the data until they
 * stay, the self-consistent estimate. Steps are lengthened by the squared extrapolation of R. Varadhan and C. Roland,
 * Scand. J. Statistics 35, 2008 (from memory), never at the cost of likelihood. It ends when no shift of mass could gain
 * more than the tolerance in mean log-likelihood (the directional derivatives bound the gap), so it is an optimum, not
 * only a standstill.
 *
 * @param count of the observations
 * @param places where losses may lie, with their mass; rising; places without mass are left out
 * @param logLikelihood at the optimum
 * @param gap at most so much mean log-likelihood is missing
 * @param iterations of the expectation step
 */
public record Turnbull(int count, List<Place> places, double logLikelihood, double gap, int iterations) {
    private static final double EXACT = 1e-10;
    private static final int MOST_ITERATIONS = 60_000;
    private static final double NOTHING = 1e-9;

    public Turnbull {
        places = List.copyOf(places);
    }

    /**
     * An interval (after, by] of hours in which a share is lost, nobody knows when.
     *
     * @param afterHours where it begins
     * @param byHours where it ends; infinite for what was never lost
     * @param mass the share
     */
    public record Place(double afterHours, double byHours, double mass) {}

    public static Turnbull of(List<Span> spans) {
        return of(spans, EXACT);
    }

    static Turnbull of(List<Span> spans, double tolerance) {
        if (spans.isEmpty()) {
            throw new IllegalArgumentException("a curve needs one observation");
        }
        return of(TurnbullIntervals.of(spans), tolerance);
    }

    /** @param tolerance of the mean log-likelihood */
    static Turnbull of(TurnbullIntervals data, double tolerance) {
        double[] masses = new double[data.places().size()];
        Arrays.fill(masses, 1.0 / masses.length);
        int iterations = 0;
        double gap = gap(data, masses);
        while (gap > tolerance && iterations < MOST_ITERATIONS) {
            masses = lengthened(data, masses);
            iterations += 3;
            gap = gap(data, masses);
        }
        List<Place> places = new ArrayList<>();
        for (int j = 0; j < masses.length; j++) {
            if (masses[j] > NOTHING) {
                Span place = data.places().get(j);
                places.add(new Place(place.afterHours(), place.byHours(), masses[j]));
            }
        }
        return new Turnbull(data.count(), places, data.logLikelihood(masses), gap, iterations);
    }

    private static double gap(TurnbullIntervals data, double[] masses) {
        return Arrays.stream(data.gradient(masses)).max().orElseThrow() / data.count() - 1;
    }

    /** Two expectation steps, a step along their curve, and one more to settle it. */
    private static double[] lengthened(TurnbullIntervals data, double[] start) {
        double[] first = expected(data, start);
        double[] second = expected(data, first);
        double along = 0;
        double bend = 0;
        for (int j = 0; j < start.length; j++) {
            double r = first[j] - start[j];
            double v = second[j] - first[j] - r;
            along += r * r;
            bend += v * v;
        }
        if (bend == 0) {
            return expected(data, second);
        }
        double step = Math.max(1, Math.sqrt(along / bend));
        double[] far = new double[start.length];
        double sum = 0;
        for (int j = 0; j < start.length; j++) {
            double r = first[j] - start[j];
            double v = second[j] - first[j] - r;
            // never to nothing, from where no expectation leads back
            far[j] = Math.max(0.01 * second[j], start[j] + 2 * step * r + step * step * v);
            sum += far[j];
        }
        for (int j = 0; j < far.length; j++) {
            far[j] /= sum;
        }
        boolean better = data.logLikelihood(far) >= data.logLikelihood(second);
        return expected(data, better ? far : second);
    }

    /** Masses as expected given the data, if these were true. */
    private static double[] expected(TurnbullIntervals data, double[] masses) {
        double[] gradient = data.gradient(masses);
        double[] next = new double[masses.length];
        double sum = 0;
        for (int j = 0; j < masses.length; j++) {
            next[j] = masses[j] * gradient[j] / data.count();
            sum += next[j];
        }
        for (int j = 0; j < next.length; j++) {
            next[j] /= sum;
        }
        return next;
    }

    /** What the data allow of the survival at a time: within an interval, anything between its ends. */
    public Interval survivalBounds(double hours) {
        double low = 0;
        double high = 0;
        for (Place place : places) {
            high += place.byHours() > hours ? place.mass() : 0;
            low += place.afterHours() >= hours ? place.mass() : 0;
        }
        return new Interval(Math.min(1, low), Math.min(1, high));
    }

    /** Survival at a time, evenly lost within each interval; what was never lost stays. */
    public double survivalAt(double hours) {
        double survival = 0;
        for (Place place : places) {
            survival += place.mass() * shareLeft(place, hours);
        }
        return Math.min(1, survival);
    }

    private static double shareLeft(Place place, double hours) {
        if (hours <= place.afterHours() || Double.isInfinite(place.byHours())) {
            return 1;
        }
        return hours >= place.byHours() ? 0 : (place.byHours() - hours) / (place.byHours() - place.afterHours());
    }
}
