package org.vanewright.engineering.inference.survival;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.Interval;

/**
 * Percentile intervals of Turnbull's curve by drawing again from what was seen: single devices, or whole installations with
 * all their devices. B. Efron and R. J. Tibshirani, An Introduction to the Bootstrap, 1993, chapters 8 and 13 (from
 * memory). Few installations give too narrow an interval; fewer than two give none.
 *
 * @param seed the same seed gives the same interval
 * @param runs how often is drawn
 */
public record Bootstrap(long seed, int runs) {
    /** Enough for two digits of a 95 % interval. */
    public static final Bootstrap USUAL = new Bootstrap(20_260_314L, 400);

    private static final double TOLERANCE = 1e-5;

    /** As if every device had a fate of its own. */
    public List<Interval> ofDevices(List<Installed> installations, List<Double> hours, double confidence) {
        List<Installed> single = installations.stream()
                .flatMap(i -> i.spans().stream())
                .map(span -> new Installed(List.of(span)))
                .toList();
        return draw(single, hours, confidence);
    }

    /** With the installation as the unit; null with fewer than two. */
    public @Nullable List<Interval> ofInstallations(
            List<Installed> installations, List<Double> hours, double confidence) {
        return installations.size() < 2 ? null : draw(installations, hours, confidence);
    }

    private List<Interval> draw(List<Installed> units, List<Double> hours, double confidence) {
        RandomGenerator chance = new Well19937c(seed);
        // Many are alike: they are counted and not gathered.
        Map<Span, Integer> numbers = new LinkedHashMap<>();
        int[][] seen = units.stream().map(u -> numbered(u, numbers)).toArray(int[][]::new);
        List<Span> different = List.copyOf(numbers.keySet());
        double[][] drawn = new double[hours.size()][runs];
        for (int run = 0; run < runs; run++) {
            int[] counts = new int[different.size()];
            for (int i = 0; i < seen.length; i++) {
                for (int number : seen[chance.nextInt(seen.length)]) {
                    counts[number]++;
                }
            }
            Turnbull curve = Turnbull.of(TurnbullIntervals.of(different, counts), TOLERANCE);
            for (int k = 0; k < hours.size(); k++) {
                drawn[k][run] = curve.survivalAt(hours.get(k));
            }
        }
        List<Interval> intervals = new ArrayList<>();
        for (double[] each : drawn) {
            Percentile percentile = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
            percentile.setData(each);
            intervals.add(new Interval(
                    percentile.evaluate(50 * (1 - confidence)), percentile.evaluate(50 * (1 + confidence))));
        }
        return intervals;
    }

    private static int[] numbered(Installed unit, Map<Span, Integer> numbers) {
        return unit.spans().stream()
                .mapToInt(span -> numbers.computeIfAbsent(span, s -> numbers.size()))
                .toArray();
    }
}
