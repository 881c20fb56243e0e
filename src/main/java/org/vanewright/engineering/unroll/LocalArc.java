package org.vanewright.engineering.unroll;

/** Arc length of the local section curve of a ruled skin, at any span fraction, and back. */
final class LocalArc {
    private static final int MOST_STEPS = 60;

    private final Rulings rulings;
    /** Rates of the inner and outer end: x and z of each. */
    private final SampledCurve rates;

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
        double sum = 0;
        for (int k = 0; k < rates.intervals(); k++) {
            sum += length(k, spanFraction);
        }
        return sum;
    }

    /** Arc from the leading edge to a ruling. */
    double arcMm(double spanFraction, double u) {
        int interval = rates.intervalOf(u);
        double sum = 0;
        for (int k = 0; k < interval; k++) {
            sum += length(k, spanFraction);
        }
        double z = 2 * (u - rates.start(interval)) / rates.width(interval) - 1;
        return sum + GaussRule.value(arcSeries(interval, spanFraction), z);
    }

    /** The ruling at an arc from the leading edge. */
    double parameter(double spanFraction, double arcMm) {
        double left = arcMm;
        for (int k = 0; k < rates.intervals(); k++) {
            double length = length(k, spanFraction);
            if (left <= length) {
                return rates.start(k) + 0.5 * rates.width(k) * (1 + within(k, spanFraction, left));
            }
            left -= length;
        }
        return rulings.last();
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
