package org.vanewright.engineering.flightlog;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import org.vanewright.engineering.flightlog.Steadiness.Spread;

/** Finds where some quantities stay steady; takes means of one second each. */
final class SteadyFinder implements SampleSink {
    private static final double GAP_S = 4;
    private static final double LONGEST_S = 600;
    private static final double SLOWEST_KT = 20;

    private final Steadiness steadiness;
    private final Consumer<FoundEvent> found;
    private final Smoothing smoothing = new Smoothing(5);
    private final Deque<FlightSample> smooth = new ArrayDeque<>();
    private final Deque<FlightSample> raw = new ArrayDeque<>();
    private Bounds bounds;

    SteadyFinder(Steadiness steadiness, Consumer<FoundEvent> found) {
        this.steadiness = steadiness;
        this.found = found;
        this.bounds = new Bounds(steadiness);
    }

    @Override
    public void accept(FlightSample sample) {
        boolean gap = !raw.isEmpty() && sample.timeS() - raw.getLast().timeS() > GAP_S;
        if (gap || !raw.isEmpty() && sample.timeS() - raw.getFirst().timeS() > LONGEST_S) {
            finish();
        }
        FlightSample mean = smoothing.add(sample);
        if (!usable(mean)) {
            finish();
            return;
        }
        if (!bounds.take(mean)) {
            if (lasts()) {
                finish();
                mean = smoothing.add(sample);
            }
            forgetUntilFits(mean);
        }
        smooth.addLast(mean);
        raw.addLast(sample);
    }

    private void forgetUntilFits(FlightSample mean) {
        boolean fits = false;
        while (!fits) {
            bounds = new Bounds(steadiness);
            if (!smooth.isEmpty()) {
                smooth.removeFirst();
                raw.removeFirst();
            }
            smooth.forEach(bounds::take);
            fits = bounds.take(mean);
        }
    }

    private boolean usable(FlightSample mean) {
        for (Spread each : steadiness.needed()) {
            if (Double.isNaN(mean.get(each.quantity()))) {
                return false;
            }
        }
        return mean.get(steadiness.needed().get(0).quantity()) >= SLOWEST_KT;
    }

    private boolean lasts() {
        return !raw.isEmpty() && raw.getLast().timeS() - raw.getFirst().timeS() >= steadiness.leastS();
    }

    /** Hands on what has been steady until now and begins anew. */
    void finish() {
        if (lasts()) {
            trim();
        }
        if (lasts()) {
            found.accept(event());
        }
        smooth.clear();
        raw.clear();
        smoothing.clear();
        bounds = new Bounds(steadiness);
    }

    /** Without the last of the way into it and the first of the way out, which lie within the bounds, too. */
    private void trim() {
        Middle middle = new Middle(smooth, steadiness);
        while (!smooth.isEmpty() && middle.isFarFrom(smooth.getFirst())) {
            smooth.removeFirst();
            raw.removeFirst();
        }
        while (!smooth.isEmpty() && middle.isFarFrom(smooth.getLast())) {
            smooth.removeLast();
            raw.removeLast();
        }
    }

    /** Medians of what must be recorded. */
    private record Middle(List<Spread> spreads, double[] medians) {
        Middle(Deque<FlightSample> samples, Steadiness steadiness) {
            this(
                    steadiness.needed().stream()
                            .filter(s -> s.quantity() != LogQuantity.TRACK)
                            .toList(),
                    steadiness.needed().stream()
                            .filter(s -> s.quantity() != LogQuantity.TRACK)
                            .mapToDouble(s -> samples.stream()
                                    .mapToDouble(x -> x.get(s.quantity()))
                                    .sorted()
                                    .skip(samples.size() / 2)
                                    .findFirst()
                                    .orElse(Double.NaN))
                            .toArray());
        }

        boolean isFarFrom(FlightSample sample) {
            for (int i = 0; i < medians.length; i++) {
                Spread spread = spreads.get(i);
                if (Math.abs(sample.get(spread.quantity()) - medians[i]) > spread.most() / 4) {
                    return true;
                }
            }
            return false;
        }
    }

    private FoundEvent event() {
        Means means = new Means(raw);
        boolean leg = steadiness.kind() == EventKind.LEG;
        return new FoundEvent(
                steadiness.kind(),
                raw.getFirst().timeS(),
                raw.getLast().timeS(),
                means.of(LogQuantity.AIRSPEED),
                means.of(LogQuantity.ALTITUDE),
                means.of(LogQuantity.TEMPERATURE),
                Double.NaN,
                Double.NaN,
                means.of(LogQuantity.POWER),
                Double.NaN,
                leg ? means.of(LogQuantity.GROUND_SPEED) : Double.NaN,
                leg ? means.trackDeg() : Double.NaN,
                steadiness.words());
    }

    /** Least and greatest of each quantity so far; tracks count from the first one. */
    private static final class Bounds {
        private final Spread[] spreads;
        private final double[] least;
        private final double[] greatest;
        private double firstTrackDeg = Double.NaN;

        Bounds(Steadiness steadiness) {
            spreads = java.util.stream.Stream.concat(steadiness.needed().stream(), steadiness.ifRecorded().stream())
                    .toArray(Spread[]::new);
            least = new double[spreads.length];
            greatest = new double[spreads.length];
            java.util.Arrays.fill(least, Double.POSITIVE_INFINITY);
            java.util.Arrays.fill(greatest, Double.NEGATIVE_INFINITY);
        }

        /** False where the sample does not fit; the bounds are of no more use then. */
        boolean take(FlightSample sample) {
            for (int i = 0; i < spreads.length; i++) {
                double value = sample.get(spreads[i].quantity());
                if (Double.isNaN(value)) {
                    continue;
                }
                if (spreads[i].quantity() == LogQuantity.TRACK) {
                    firstTrackDeg = Double.isNaN(firstTrackDeg) ? value : firstTrackDeg;
                    value = Angles.turn(firstTrackDeg, value);
                }
                least[i] = Math.min(least[i], value);
                greatest[i] = Math.max(greatest[i], value);
                if (greatest[i] - least[i] > spreads[i].most()) {
                    return false;
                }
            }
            return true;
        }
    }
}
