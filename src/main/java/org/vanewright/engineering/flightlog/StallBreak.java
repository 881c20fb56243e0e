package org.vanewright.engineering.flightlog;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.flightlog.Recent.Low;

/**
 * Where a stall breaks.
 *
 * @param timeS half way into the drop
 * @param how by what it is known, in words
 */
record StallBreak(double timeS, String how) {
    /** Normal acceleration falls by so much at least, in g. */
    static final double DROP_G = 0.25;
    /** The nose goes down so much faster at least than before, in degrees per second. */
    static final double PITCH_DEG_PER_S = 5;
    /** Where nothing else is recorded, the airspeed rises by so much within {@link #QUICK_S}, soon after the lowest. */
    static final double QUICK_KT = 8.5;

    static final double QUICK_S = 4;
    private static final String LOWEST = "the lowest airspeed with a quick rise after it";
    private static final double BEFORE_S = 4;
    private static final double AFTER_S = 5;
    private static final double SHORT_S = 0.3;

    /** Whether nothing else shows it. */
    boolean isLowestOnly() {
        return how.equals(LOWEST);
    }

    /** The one near a lowest airspeed; null where there is none. */
    static @Nullable StallBreak near(Low low, Recent recent) {
        Drop g = drop(LogQuantity.LOAD_FACTOR, low, recent);
        Drop pitch = drop(LogQuantity.PITCH_RATE, low, recent);
        if (g == null) {
            return pitch == null ? byLowest(low, recent) : byPitch(pitch);
        }
        if (pitch == null) {
            return g.by >= DROP_G ? new StallBreak(g.timeS, "a drop of normal acceleration") : null;
        }
        double strength = Math.min(2, g.by / DROP_G) + Math.min(2, pitch.by / PITCH_DEG_PER_S);
        return strength >= 2
                ? new StallBreak(
                        g.by / DROP_G >= pitch.by / PITCH_DEG_PER_S / 2 ? g.timeS : pitch.timeS,
                        "a drop of normal acceleration with the nose going down")
                : null;
    }

    private static @Nullable StallBreak byLowest(Low low, Recent recent) {
        return quickest(low, recent) >= QUICK_KT ? new StallBreak(low.timeS(), LOWEST) : null;
    }

    private static @Nullable StallBreak byPitch(Drop pitch) {
        return pitch.by >= PITCH_DEG_PER_S ? new StallBreak(pitch.timeS, "the nose going down") : null;
    }

    private static double quickest(Low low, Recent recent) {
        return recent.quickest(1, LogQuantity.AIRSPEED, low.timeS(), low.timeS() + 2 * QUICK_S, QUICK_S);
    }

    /** Rolling out of a turn is no break: what it has above level flight does not count. */
    private static double level(LogQuantity quantity) {
        return quantity == LogQuantity.LOAD_FACTOR ? 1.05 : 1;
    }

    /** How far a quantity falls below what it was before, and when it was half way. */
    private record Drop(double timeS, double by) {}

    private static @Nullable Drop drop(LogQuantity quantity, Low low, Recent recent) {
        double from = low.timeS() - BEFORE_S;
        double to = low.timeS() + AFTER_S;
        double before = Math.min(recent.mean(quantity, from - 8, from), level(quantity));
        Low least = recent.lowest(quantity, from, to, SHORT_S);
        if (Double.isNaN(before) || Double.isNaN(least.level())) {
            return null;
        }
        double by = before - least.level();
        double half = before - by / 2;
        double at = least.timeS();
        for (int i = recent.size() - 1; i >= 0 && recent.get(i).timeS() >= from; i--) {
            double time = recent.get(i).timeS();
            if (time <= at && recent.mean(quantity, time - SHORT_S / 2, time + SHORT_S / 2) > half) {
                break;
            }
            at = time <= at ? time : at;
        }
        return new Drop(at, by);
    }
}
