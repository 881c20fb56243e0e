package org.vanewright.engineering.inference.survival;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
        List<Span> places = places(spans);
        Map<Span, Integer> counts = new LinkedHashMap<>();
        spans.forEach(s -> counts.merge(s, 1, Integer::sum));
        List<Row> rows = new ArrayList<>();
        counts.forEach((span, weight) -> rows.add(row(span, weight, places)));
        return new TurnbullIntervals(places, rows, spans.size());
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

    private static Row row(Span span, int weight, List<Span> places) {
        int first = 0;
        while (places.get(first).afterHours() < span.afterHours()) {
            first++;
        }
        int last = first;
        while (last + 1 < places.size() && places.get(last + 1).byHours() <= span.byHours()) {
            last++;
        }
        return new Row(first, last, weight);
    }

    /** For each place how much it would add: Σ over observations that hold it of weight over their mass. */
    double[] gradient(double[] masses) {
        double[] sums = new double[masses.length + 1];
        for (int j = 0; j < masses.length; j++) {
            sums[j + 1] = sums[j] + masses[j];
        }
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
        double sum = 0;
        for (Row row : rows) {
            double mass = 0;
            for (int j = row.first(); j <= row.last(); j++) {
                mass += masses[j];
            }
            sum += row.weight() * Math.log(mass);
        }
        return sum;
    }
}
