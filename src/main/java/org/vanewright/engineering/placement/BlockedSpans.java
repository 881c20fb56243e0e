package org.vanewright.engineering.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Open span intervals in which no unit's centre may lie, each with its reason. Not thread-safe. */
final class BlockedSpans {
    /** Bases may touch, so two centres may be this much nearer than their half widths add up to. */
    private static final double TOUCH_MM = 1e-6;

    private final List<Span> spans = new ArrayList<>();

    /** The same intervals joined where they overlap: lower end to upper end. */
    private final NavigableMap<Double, Double> joined = new TreeMap<>();

    private record Span(double fromMm, double toMm, String reason) {
        boolean holds(double stationMm) {
            return stationMm > fromMm + TOUCH_MM && stationMm < toMm - TOUCH_MM;
        }
    }

    void block(double fromMm, double toMm, String reason) {
        if (toMm - fromMm <= 2 * TOUCH_MM) {
            return;
        }
        spans.add(new Span(fromMm, toMm, reason));
        double from = fromMm;
        double to = toMm;
        Map.Entry<Double, Double> near = joined.lowerEntry(to - 2 * TOUCH_MM);
        while (near != null && near.getValue() > from + 2 * TOUCH_MM) {
            from = Math.min(from, near.getKey());
            to = Math.max(to, near.getValue());
            joined.remove(near.getKey());
            near = joined.lowerEntry(to - 2 * TOUCH_MM);
        }
        joined.merge(from, to, Math::max);
    }

    boolean isFree(double stationMm) {
        return around(stationMm) == null;
    }

    /** What is in the way at a station, the first thing named to {@link #block}; null when it is free. */
    @Nullable
    String reasonAt(double stationMm) {
        return spans.stream()
                .filter(s -> s.holds(stationMm))
                .map(Span::reason)
                .findFirst()
                .orElse(null);
    }

    /** The free station nearest to the one asked for within an interval; the inner one of two as near; null if none. */
    @Nullable
    Double nearestFree(double stationMm, double lowestMm, double highestMm) {
        Map.Entry<Double, Double> blocked = around(stationMm);
        if (blocked == null) {
            return stationMm;
        }
        double inner = blocked.getKey();
        double outer = blocked.getValue();
        boolean innerServes = inner >= lowestMm;
        boolean outerServes = outer <= highestMm;
        if (innerServes && (!outerServes || stationMm - inner <= outer - stationMm)) {
            return inner;
        }
        return outerServes ? outer : null;
    }

    /** The joined interval that holds the station. */
    private Map.@Nullable Entry<Double, Double> around(double stationMm) {
        Map.Entry<Double, Double> below = joined.lowerEntry(stationMm - TOUCH_MM);
        return below != null && stationMm < below.getValue() - TOUCH_MM ? below : null;
    }
}
