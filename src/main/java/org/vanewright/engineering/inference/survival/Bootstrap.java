package org.vanewright.engineering.inference.survival;

import java.util.ArrayList;
import java.util.List;
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
        double[][] drawn = new double[hours.size()][runs];
        for (int run = 0; run < runs; run++) {
            List<Span> spans = new ArrayList<>();
            for (int i = 0; i < units.size(); i++) {
                spans.addAll(units.get(chance.nextInt(units.size())).spans());
            }
            Turnbull curve = Turnbull.of(spans, TOLERANCE);
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
}
