package org.vanewright.engineering.inference.survival;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Where a curve through interval-censored observations can fall at all: the intervals (q, p] that begin with a left end,
 * end with a right end and have no other end between (R. Peto, Applied Statistics 22, 1973; B. W. Turnbull, J. R. Stat.
 * Soc. B 38, 1976; both from memory). What falls within one says nothing about where.
 *
 * @param places the intervals, rising; the last may reach to infinity
 * @param rows the observations, alike ones together
 * @param count of the observations
 */
record TurnbullIntervals(List<Span> places, List<Row> rows, int count) {
    /**
     * Observations that are alike.
     *
     * @param first index of the first place within them
     * @param last index of the last
     * @param weight how many
     */
    record Row(int first, int last, int weight) {}

    static TurnbullIntervals of(List<Span> spans) {
        Map<Span, Integer> counts = new LinkedHashMap<>();
        spans.forEach(s -> counts.merge(s, 1, Integer::sum));
        List<Span> different = List.copyOf(counts.keySet());
        return of(different, different.stream().mapToInt(counts::get).toArray());
    }

    /**
     * @param different observations, each once
     * @param counts how many there are of each; those with none do not count
     */
    static TurnbullIntervals of(List<Span> different, int[] counts) {
        List<Span> seen = IntStream.range(0, counts.length)
                .filter(i -> counts[i] > 0)
                .mapToObj(different::get)
                .toList();
        List<Span> places = places(seen);
        double[] begins = places.stream().mapToDouble(Span::afterHours).toArray();
        double[] ends = places.stream().mapToDouble(Span::byHours).toArray();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                rows.add(row(different.get(i), counts[i], begins, ends));
            }
        }
        return new TurnbullIntervals(places, rows, Arrays.stream(counts).sum());
    }

    private static List<Span> places(List<Span> spans) {
        double[] lefts = spans.stream().mapToDouble(Span::afterHours).sorted().toArray();
        double[] rights = spans.stream().mapToDouble(Span::byHours).sorted().toArray();
        List<Span> places = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < lefts.length; i++) {
            // a right end at the same time comes first: (a, t] and (t, b] do not meet
            while (rights[next] <= lefts[i]) {
                next++;
            }
            boolean anotherLeftBefore = i + 1 < lefts.length && lefts[i + 1] < rights[next];
            if (!anotherLeftBefore) {
                places.add(new Span(lefts[i], rights[next]));
            }
        }
        return places;
    }

    /** From the first place that begins no sooner to the last that ends no later; both rise. */
    private static Row row(Span span, int weight, double[] begins, double[] ends) {
        int first = Arrays.binarySearch(begins, span.afterHours());
        int last = Arrays.binarySearch(ends, span.byHours());
        return new Row(first < 0 ? -first - 1 : first, last < 0 ? -last - 2 : last, weight);
    }

    /** For each place how much it would add: Σ over observations that hold it of weight over their mass. */
    double[] gradient(double[] masses) {
        double[] sums = sums(masses);
        double[] change = new double[masses.length + 1];
        for (Row row : rows) {
            double per = row.weight() / (sums[row.last() + 1] - sums[row.first()]);
            change[row.first()] += per;
            change[row.last() + 1] -= per;
        }
        double[] gradient = new double[masses.length];
        double running = 0;
        for (int j = 0; j < masses.length; j++) {
            running += change[j];
            gradient[j] = Math.max(0, running);
        }
        return gradient;
    }

    double logLikelihood(double[] masses) {
        double[] sums = sums(masses);
        double sum = 0;
        for (Row row : rows) {
            sum += row.weight() * Math.log(sums[row.last() + 1] - sums[row.first()]);
        }
        return sum;
    }

    private static double[] sums(double[] masses) {
        double[] sums = new double[masses.length + 1];
        for (int j = 0; j < masses.length; j++) {
            sums[j + 1] = sums[j] + masses[j];
        }
        return sums;
    }
}
