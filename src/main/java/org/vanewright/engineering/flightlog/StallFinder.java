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
    private static final double SMOOTH_S = 1.0;
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
            if (sample.timeS() - lastSpeedS > StallEntry.GAP_S) {
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
        StallEntry entry = new StallEntry(recent, stall);
        double from = entry.passedS();
        double rate = entry.rateKtPerS(from);
        if (rate >= 0.1 && rate <= 8) {
            lastStallS = broke.timeS();
            found.accept(entry.event(from, broke.timeS(), rate, broke.how()));
        }
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
}
