package org.vanewright.platform.plot;

import java.util.List;

/**
 * One curve of a plot.
 *
 * @param name what it is, for the legend and the table
 * @param points from one end to the other
 * @param look how it is drawn
 */
public record Curve(String name, List<PlotPoint> points, Look look) {
    /** How a curve is drawn. Dashes tell curves apart where colours do not. */
    public enum Look {
        LINE,
        DASHED,
        DOTTED,
        POINTS,
        /** Points with their intervals: of every four points lower end, point, upper end, and NaN. */
        INTERVALS,
        /** The same, hollow and dotted, for what stands back. */
        DOTTED_INTERVALS;

        boolean hasIntervals() {
            return this == INTERVALS || this == DOTTED_INTERVALS;
        }

        boolean hasShapes() {
            return this == POINTS || hasIntervals();
        }
    }

    public Curve {
        points = List.copyOf(points);
    }
}
