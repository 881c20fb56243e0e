package org.vanewright.engineering.unroll;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Arc length of the local section curve of a ruled skin, at any span fraction, and back. */
final class LocalArc {
    private static final int MOST_STEPS = 60;

    private final Rulings rulings;
    /** Rates of the inner and outer end: x and z of each. */
    private final SampledCurve rates;

    /** Places are mostly asked for several at a time along one section. Replaced as a whole, so safe between threads. */
    private volatile @Nullable Lengths latest;

    @SuppressWarnings("ArrayRecordComponent") // never leaves this class
    private record Lengths(double spanFraction, double[] upTo) {}

    LocalArc(Rulings rulings) {
        this.rulings = rulings;
        double chord = rulings.longestChordMm();
        this.rates =
                SampledCurve.of(LocalArc.rates(rulings), rulings.edges(), new double[] {chord, chord, chord, chord});
    }

    private static SampledCurve.Quantities rates(Rulings rulings) {
        return u -> {
            RulingEnds ends = rulings.at(u);
            return new double[] {
                ends.innerRate().x(),
                ends.innerRate().z(),
                ends.outerRate().x(),
                ends.outerRate().z()
            };
        };
    }

    double lengthMm(double spanFraction) {
        double[] upTo = upTo(spanFraction);
        return upTo[upTo.length - 1];
    }

    /** Arc from the leading edge to a ruling. */
    double arcMm(double spanFraction, double u) {
        int interval = rates.intervalOf(u);
        double z = 2 * (u - rates.start(interval)) / rates.width(interval) - 1;
        return upTo(spanFraction)[interval] + GaussRule.value(arcSeries(interval, spanFraction), z);
    }

    /** The ruling at an arc from the leading edge. */
    double parameter(double spanFraction, double arcMm) {
        double[] upTo = upTo(spanFraction);
        int found = Arrays.binarySearch(upTo, arcMm);
        int interval = Math.max(found >= 0 ? found - 1 : -found - 2, 0);
        if (interval >= rates.intervals()) {
            return rulings.last();
        }
        double within = within(interval, spanFraction, arcMm - upTo[interval]);
        return rates.start(interval) + 0.5 * rates.width(interval) * (1 + within);
    }

    /** Arcs from the leading edge to the starts of the intervals, and to the end of the last. */
    private double[] upTo(double spanFraction) {
        Lengths kept = latest;
        if (kept == null || kept.spanFraction() != spanFraction) {
            double[] upTo = new double[rates.intervals() + 1];
            for (int k = 0; k < rates.intervals(); k++) {
                upTo[k + 1] = upTo[k] + length(k, spanFraction);
            }
            kept = new Lengths(spanFraction, upTo);
            latest = kept;
        }
        return kept.upTo();
    }

    /** Newton's rule kept inside a shrinking bracket; the arc never decreases. */
    private double within(int interval, double spanFraction, double arcMm) {
        double[] speed = GaussRule.series(speeds(interval, spanFraction));
        double[] arc = arcSeries(interval, spanFraction);
        double half = 0.5 * rates.width(interval);
        double low = -1;
        double high = 1;
        double z = 0;
        for (int i = 0; i < MOST_STEPS && high - low > 1e-15; i++) {
            double miss = GaussRule.value(arc, z) - arcMm;
            if (miss > 0) {
                high = z;
            } else {
                low = z;
            }
            double next = z - miss / (half * GaussRule.value(speed, z));
            boolean inside = next > low && next < high;
            double step = inside ? next - z : 0.5 * (low + high) - z;
            z += step;
            if (Math.abs(step) < 1e-15) {
                break;
            }
        }
        return z;
    }

    private double length(int interval, double spanFraction) {
        double sum = 0;
        for (int i = 0; i < GaussRule.SIZE; i++) {
            sum += GaussRule.weight(i) * speed(interval, spanFraction, i);
        }
        return 0.5 * rates.width(interval) * sum;
    }

    private double[] arcSeries(int interval, double spanFraction) {
        double[] series = GaussRule.integral(GaussRule.series(speeds(interval, spanFraction)));
        for (int i = 0; i < series.length; i++) {
            series[i] *= 0.5 * rates.width(interval);
        }
        return series;
    }

    private double[] speeds(int interval, double spanFraction) {
        double[] speeds = new double[GaussRule.SIZE];
        for (int i = 0; i < GaussRule.SIZE; i++) {
            speeds[i] = speed(interval, spanFraction, i);
        }
        return speeds;
    }

    private double speed(int interval, double t, int sample) {
        double x = (1 - t) * rates.sample(interval, 0, sample) + t * rates.sample(interval, 2, sample);
        double z = (1 - t) * rates.sample(interval, 1, sample) + t * rates.sample(interval, 3, sample);
        return Math.sqrt(x * x + z * z);
    }
}
