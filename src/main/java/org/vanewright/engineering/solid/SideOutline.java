package org.vanewright.engineering.solid;

import java.util.NavigableSet;
import java.util.TreeSet;

/**
 * The vane seen from the side: where its leading edge is at each height. Two kinds: a straight leading edge that runs
 * into the tip over an arc ({@code radius} may be 0), and an ogive, which is such an arc from root to tip.
 */
final class SideOutline {
    private final double height;
    private final double sweep;
    private final double radius;
    /** Height at which the straight part ends and the arc begins. */
    private final double arcStart;
    /** Where the arc meets the tip: the x of its centre. */
    private final double arcEnd;

    private SideOutline(double height, double sweep, double radius, double arcStart, double arcEnd) {
        this.height = height;
        this.sweep = sweep;
        this.radius = radius;
        this.arcStart = arcStart;
        this.arcEnd = arcEnd;
    }

    /**
     * @param sweep how far behind the root's leading edge the unrounded tip begins
     * @param radius of the arc that is tangent to the leading edge and to the tip
     */
    static SideOutline straight(double height, double sweep, double radius) {
        double slant = Math.hypot(sweep, height);
        double start = height - radius + radius * sweep / slant;
        return new SideOutline(height, sweep, radius, start, sweep / height * start + radius * height / slant);
    }

    /** A circular arc through the root's leading edge, tangent to the tip {@code run} behind it; run ≥ height. */
    static SideOutline ogive(double height, double run) {
        return new SideOutline(height, run, (height * height + run * run) / (2 * height), 0, run);
    }

    /** Distance of the leading edge behind its place at the root. */
    double leadingEdgeX(double z) {
        if (z <= arcStart) {
            return sweep / height * z;
        }
        double rise = z - (height - radius);
        return arcEnd - Math.sqrt(Math.max(0, radius * radius - rise * rise));
    }

    /** Height where the arc begins; negative where the arc asks for more than the height. */
    double arcStart() {
        return arcStart;
    }

    /** Where the leading edge meets the tip. */
    double tipX() {
        return arcEnd;
    }

    /** Heights of the facets' ends, root and tip included. */
    NavigableSet<Double> levels(double toleranceMm) {
        NavigableSet<Double> levels = new TreeSet<>();
        levels.add(0.0);
        levels.add(height);
        if (radius > 0) {
            double from = Math.asin(Math.max(-1, Math.min(1, (arcStart - (height - radius)) / radius)));
            int n = Arcs.segments(radius, Math.PI / 2 - from, toleranceMm);
            levels.add(arcStart);
            for (int i = 1; i < n; i++) {
                levels.add(height - radius + radius * Math.sin(from + (Math.PI / 2 - from) * i / n));
            }
        }
        return levels;
    }
}
