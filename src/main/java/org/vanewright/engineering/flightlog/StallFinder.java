package org.vanewright.engineering.flightlog;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.Consumer;
import org.vanewright.engineering.flightlog.Recent.Low;

/**
 * Finds stalls: the airspeed falls to a lowest value and rises again by {@value #REVERSAL_KT} kt within
 * {@value #RECOVERY_S} s; round the lowest value there is a break; before it the airspeed came down from 1.1 of that
 * value without a gap. The break is a drop of normal acceleration, a nose-down pitch rate, or both where both are
 * recorded; where neither is, a quick rise from the lowest airspeed. Where altitude is recorded, some is lost after it.
 *
 * <p>The definition of the entry rate, the mean slowing down from 1.1 of the stall speed, is that of 14 CFR 23.201 and
 * 25.103(c) (as amended before 2017; from memory). The thresholds are common practice of this code, tried on simulated
 * flights; events are for a person to accept.
 */
final class StallFinder implements SampleSink {
    static final double REVERSAL_KT = 4;
    static final double RECOVERY_S = 12;
    private static final double SETTLE_S = 8;
    private static final double LITTLE_FT = 15;
    /** A slow oscillation has a lowest airspeed, too, but sinks less quickly after it. */
    private static final double SINK_FT = 40;

    private static final double SINK_S = 3;
    private static final double SLOWEST_KT = 18;
    private static final double GAP_S = 3;
    private static final double SMOOTH_S = 1.0;
    private static final double ENTRY_S = 60;
    private static final double APART_S = 6;

    private final Consumer<FoundEvent> found;
    private final Recent recent = new Recent(1200);
    private final Deque<FlightSample> second = new ArrayDeque<>();
    private final Deque<Low> waiting = new ArrayDeque<>();
    private Low low = new Low(Double.NaN, Double.POSITIVE_INFINITY);
    private double highKt = Double.NEGATIVE_INFINITY;
    private boolean falling;
    private double lastS = Double.NaN;
    private double lastSpeedS = Double.NaN;
    private double lastStallS = Double.NEGATIVE_INFINITY;

    StallFinder(Consumer<FoundEvent> found) {
        this.found = found;
    }

    @Override
    public void accept(FlightSample sample) {
        if (sample.timeS() - lastS > 2 * RECOVERY_S) {
            finish();
        }
        lastS = sample.timeS();
        recent.add(sample);
        if (!Double.isNaN(sample.indicatedAirspeedKt())) {
            if (sample.timeS() - lastSpeedS > GAP_S) {
                restart();
            }
            lastSpeedS = sample.timeS();
            turningPoints(sample);
        }
        while (!waiting.isEmpty() && lastS >= waiting.getFirst().timeS() + SETTLE_S) {
            judge(waiting.removeFirst());
        }
    }

    /** Judges what is still waiting and forgets all. */
    void finish() {
        waiting.forEach(this::judge);
        waiting.clear();
        restart();
        recent.clear();
    }

    private void restart() {
        second.clear();
        falling = false;
        highKt = Double.NEGATIVE_INFINITY;
    }

    private void turningPoints(FlightSample sample) {
        second.addLast(sample);
        while (sample.timeS() - second.getFirst().timeS() > SMOOTH_S + 1e-6) {
            second.removeFirst();
        }
        double speed =
                second.stream().mapToDouble(FlightSample::indicatedAirspeedKt).sum() / second.size();
        double at = (second.getFirst().timeS() + sample.timeS()) / 2;
        if (falling) {
            if (speed < low.level()) {
                low = new Low(at, speed);
            } else if (speed >= low.level() + REVERSAL_KT) {
                if (at - low.timeS() <= RECOVERY_S && low.level() >= SLOWEST_KT) {
                    waiting.addLast(low);
                }
                falling = false;
                highKt = speed;
            }
        } else if (speed > highKt) {
            highKt = speed;
        } else if (speed <= highKt - REVERSAL_KT) {
            falling = true;
            low = new Low(at, speed);
        }
    }

    private void judge(Low candidate) {
        StallBreak broke = StallBreak.near(candidate, recent);
        if (broke == null || broke.timeS() - lastStallS < APART_S) {
            return;
        }
        Low stall = recent.lowest(LogQuantity.AIRSPEED, broke.timeS() - 2, broke.timeS() + 1, SMOOTH_S);
        if (Double.isNaN(stall.level()) || !losesHeight(broke)) {
            return;
        }
        double from = passed(1.1 * stall.level(), stall.timeS());
        double rate = -slope(from, stall.timeS());
        if (rate >= 0.1 && rate <= 8) {
            lastStallS = broke.timeS();
            found.accept(event(stall, from, rate, broke));
        }
    }

    private FoundEvent event(Low stall, double from, double rate, StallBreak broke) {
        double at = stall.timeS();
        return new FoundEvent(
                EventKind.STALL,
                from,
                Math.max(broke.timeS(), at),
                stall.level(),
                recent.mean(LogQuantity.ALTITUDE, at - 1, at + 1),
                recent.mean(LogQuantity.TEMPERATURE, from, at),
                recent.mean(
                        LogQuantity.LOAD_FACTOR, Math.min(at, broke.timeS()) - 2.3, Math.min(at, broke.timeS()) - 0.3),
                rate,
                recent.mean(LogQuantity.POWER, from, at),
                Double.NaN,
                Double.NaN,
                Double.NaN,
                broke.how());
    }

    private boolean losesHeight(StallBreak broke) {
        if (broke.isLowestOnly()) {
            double sink = recent.quickest(-1, LogQuantity.ALTITUDE, broke.timeS(), broke.timeS() + SETTLE_S, SINK_S);
            return Double.isNaN(sink) || sink >= SINK_FT;
        }
        double then = recent.mean(LogQuantity.ALTITUDE, broke.timeS() - 1, broke.timeS() + 1);
        double lowest = recent.lowest(LogQuantity.ALTITUDE, broke.timeS() + 1, broke.timeS() + SETTLE_S, 1)
                .level();
        return Double.isNaN(then) || Double.isNaN(lowest) || lowest <= then - LITTLE_FT;
    }

    /** When the smoothed airspeed was last at that speed; NaN where it was not, or a gap lies between. */
    private double passed(double speedKt, double beforeS) {
        double after = beforeS;
        for (int i = recent.size() - 1; i >= 0 && recent.get(i).timeS() >= beforeS - ENTRY_S; i--) {
            double at = recent.get(i).timeS();
            if (at < beforeS) {
                if (after - at > GAP_S) {
                    return Double.NaN;
                }
                if (recent.mean(LogQuantity.AIRSPEED, at - SMOOTH_S / 2, at + SMOOTH_S / 2) >= speedKt) {
                    return at;
                }
                after = at;
            }
        }
        return Double.NaN;
    }

    /** Of the airspeed, by least squares; NaN where fewer than two samples are there. */
    private double slope(double fromS, double toS) {
        LineFit fit = new LineFit();
        for (int i = 0; i < recent.size(); i++) {
            FlightSample each = recent.get(i);
            if (each.timeS() >= fromS && each.timeS() <= toS && !Double.isNaN(each.indicatedAirspeedKt())) {
                fit.add(each.timeS() - toS, each.indicatedAirspeedKt());
            }
        }
        return fit.slope();
    }
}
