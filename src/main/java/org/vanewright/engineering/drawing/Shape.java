package org.vanewright.engineering.drawing;

import java.util.List;
import org.vanewright.engineering.geometry.Point2;

/** One thing on a drawing. */
public sealed interface Shape {
    Layer layer();

    /** Straight segments through the points; curves come as points within the drawing's tolerance. */
    record Polyline(Layer layer, Pen pen, Fill fill, List<Point2> points, boolean closed) implements Shape {
        public Polyline {
            points = List.copyOf(points);
            if (points.size() < 2) {
                throw new IllegalArgumentException("a polyline needs two points: " + points);
            }
        }
    }

    /** A full circle. */
    record Circle(Layer layer, Pen pen, Fill fill, Point2 centre, double radiusMm) implements Shape {}

    /**
     * One line of lettering.
     *
     * @param at anchor point on the base line
     * @param heightMm cap height
     * @param rotationDeg direction of reading, anticlockwise from x
     */
    record Text(Layer layer, String text, Point2 at, double heightMm, double rotationDeg, Align align)
            implements Shape {}

    /** Where the anchor of a text lies along its base line. */
    enum Align {
        START,
        MIDDLE,
        END
    }

    static Polyline line(Layer layer, Pen pen, Point2 from, Point2 to) {
        return new Polyline(layer, pen, Fill.NONE, List.of(from, to), false);
    }

    static Polyline open(Layer layer, Pen pen, List<Point2> points) {
        return new Polyline(layer, pen, Fill.NONE, points, false);
    }

    static Polyline outline(Layer layer, Pen pen, Fill fill, List<Point2> points) {
        return new Polyline(layer, pen, fill, points, true);
    }
}
