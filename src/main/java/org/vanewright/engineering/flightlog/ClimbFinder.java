package org.vanewright.engineering.flightlog;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;

/**
 * Finds climbs at a steady rate and airspeed: five-second means of the altitude stay within {@value #OFF_FT} ft of a
 * straight line over {@value #BAND_FT} ft or more. Takes means of one second each.
 */
final class ClimbFinder implements SampleSink {
    static final double OFF_FT = 20;
    static final double BAND_FT = 300;
    private static final double SPEED_SPREAD_KT = 6;
    private static final double BEGIN_S = 15;
    private static final double BEGIN_OFF_FT = 8;
    private static final double LEAST_FT_PER_S = 100 / 60.0;
    private static final double GAP_S = 4;
    private static final double LONGEST_S = 600;

    private final Consumer<FoundEvent> found;
    private final Smoothing smoothing = new Smoothing(5);
    private final Deque<FlightSample> smooth = new ArrayDeque<>();
    private final Deque<FlightSample> raw = new ArrayDeque<>();
    private LineFit line = new LineFit();
    private double slowestKt = Double.POSITIVE_INFINITY;
    private double fastestKt = Double.NEGATIVE_INFINITY;
    private boolean climbing;

    ClimbFinder(Consumer<FoundEvent> found) {
        this.found = found;
    }

    @Override
    public void accept(FlightSample sample) {
        boolean gap = !raw.isEmpty() && sample.timeS() - raw.getLast().timeS() > GAP_S;
        if (gap || !raw.isEmpty() && sample.timeS() - raw.getFirst().timeS() > LONGEST_S) {
            finish();
        }
        FlightSample mean = smoothing.add(sample);
        if (Double.isNaN(mean.pressureAltitudeFt()) || Double.isNaN(mean.indicatedAirspeedKt())) {
            finish();
            return;
        }
        if (climbing && !goesOn(mean)) {
            finish();
            mean = smoothing.add(sample);
        }
        smooth.addLast(mean);
        raw.addLast(sample);
        if (climbing) {
            take(mean);
        } else {
            begin();
        }
    }

    private boolean goesOn(FlightSample mean) {
        double low = Math.min(slowestKt, mean.indicatedAirspeedKt());
        double high = Math.max(fastestKt, mean.indicatedAirspeedKt());
        double off = mean.pressureAltitudeFt()
                - line.at(mean.timeS() - raw.getFirst().timeS());
        return high - low <= SPEED_SPREAD_KT && Math.abs(off) <= OFF_FT;
    }

    private void take(FlightSample mean) {
        slowestKt = Math.min(slowestKt, mean.indicatedAirspeedKt());
        fastestKt = Math.max(fastestKt, mean.indicatedAirspeedKt());
        line.add(mean.timeS() - raw.getFirst().timeS(), mean.pressureAltitudeFt());
    }

    private void begin() {
        while (raw.getLast().timeS() - raw.getFirst().timeS() > BEGIN_S + 1) {
            raw.removeFirst();
            smooth.removeFirst();
        }
        if (raw.getLast().timeS() - raw.getFirst().timeS() < BEGIN_S) {
            return;
        }
        reset();
        smooth.forEach(this::take);
        double startS = raw.getFirst().timeS();
        climbing = line.slope() >= LEAST_FT_PER_S
                && fastestKt - slowestKt <= SPEED_SPREAD_KT
                && smooth.stream()
                        .allMatch(s -> Math.abs(s.pressureAltitudeFt() - line.at(s.timeS() - startS)) <= BEGIN_OFF_FT);
    }

    private void reset() {
        line = new LineFit();
        slowestKt = Double.POSITIVE_INFINITY;
        fastestKt = Double.NEGATIVE_INFINITY;
    }

    /** Hands on the climb until now, if there is one, and begins anew. */
    void finish() {
        if (climbing) {
            double lasted = raw.getLast().timeS() - raw.getFirst().timeS();
            if (line.slope() * lasted >= BAND_FT && line.slope() >= LEAST_FT_PER_S) {
                found.accept(event());
            }
        }
        climbing = false;
        smooth.clear();
        raw.clear();
        smoothing.clear();
        reset();
    }

    private FoundEvent event() {
        Means means = new Means(raw);
        return new FoundEvent(
                EventKind.CLIMB,
                raw.getFirst().timeS(),
                raw.getLast().timeS(),
                means.of(LogQuantity.AIRSPEED),
                means.of(LogQuantity.ALTITUDE),
                means.of(LogQuantity.TEMPERATURE),
                Double.NaN,
                Double.NaN,
                means.of(LogQuantity.POWER),
                line.slope() * 60,
                Double.NaN,
                Double.NaN,
                "altitude within " + (int) OFF_FT + " ft of a straight line and airspeed within "
                        + (int) SPEED_SPREAD_KT + " kt over " + (int) BAND_FT + " ft or more");
    }
}
