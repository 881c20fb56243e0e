package org.vanewright.engineering.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Open span intervals in which no unit's centre may lie, each with its reason. Not thread-safe. */
final class BlockedSpans {
    /** Bases may touch, so two centres may be this much nearer than their half widths add up to. */
    private static final double TOUCH_MM = 1e-6;

    private final List<Span> spans = new ArrayList<>();

    private record Span(double fromMm, double toMm, String reason) {
        boolean holds(double stationMm) {
            return stationMm > fromMm + TOUCH_MM && stationMm < toMm - TOUCH_MM;
        }
    }

    void block(double fromMm, double toMm, String reason) {
        spans.add(new Span(fromMm, toMm, reason));
    }

    /** What is in the way at a station; null when it is free. */
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
        List<Double> candidates = new ArrayList<>(List.of(stationMm, lowestMm, highestMm));
        for (Span span : spans) {
            candidates.add(span.fromMm());
            candidates.add(span.toMm());
        }
        return candidates.stream()
                .filter(c -> c >= lowestMm && c <= highestMm && reasonAt(c) == null)
                .min(Comparator.comparingDouble((Double c) -> Math.abs(c - stationMm))
                        .thenComparingDouble(c -> c))
                .orElse(null);
    }
}
