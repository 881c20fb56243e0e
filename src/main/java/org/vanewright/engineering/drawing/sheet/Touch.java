package org.vanewright.engineering.drawing.sheet;

import java.util.List;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;

/** Whether a shape has anything in a rectangle; the inside of a closed outline counts, since it is part of the piece. */
final class Touch {
    private Touch() {}

    static boolean test(Shape shape, Bounds area) {
        if (shape instanceof Shape.Polyline line) {
            return polyline(line, area);
        }
        if (shape instanceof Shape.Circle circle) {
            Point2 c = circle.centre();
            double dx = c.x() - Math.max(area.minXMm(), Math.min(area.maxXMm(), c.x()));
            double dy = c.y() - Math.max(area.minYMm(), Math.min(area.maxYMm(), c.y()));
            return Math.hypot(dx, dy) <= circle.radiusMm();
        }
        return Bounds.of(shape).touches(area);
    }

    private static boolean polyline(Shape.Polyline line, Bounds area) {
        List<Point2> points = line.points();
        for (int i = 1; i < points.size(); i++) {
            if (segment(points.get(i - 1), points.get(i), area)) {
                return true;
            }
        }
        return line.closed()
                && (segment(points.get(points.size() - 1), points.get(0), area) || encloses(points, area.centre()));
    }

    static boolean segment(Point2 from, Point2 to, Bounds area) {
        double[] inside = inside(from, to, area);
        return inside[0] <= inside[1];
    }

    /**
     * Where the segment enters and leaves the rectangle, as fractions of its length; the first is greater than the
     * second when they do not meet.
     *
     * <p>Source: Y.-D. Liang and B. A. Barsky, A New Concept and Method for Line Clipping, ACM Transactions on
     * Graphics 3(1), 1984.
     */
    static double[] inside(Point2 from, Point2 to, Bounds area) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double[] p = {-dx, dx, -dy, dy};
        double[] q = {
            from.x() - area.minXMm(), area.maxXMm() - from.x(), from.y() - area.minYMm(), area.maxYMm() - from.y()
        };
        double enter = 0;
        double leave = 1;
        for (int side = 0; side < 4; side++) {
            if (p[side] == 0) {
                if (q[side] < 0) {
                    return new double[] {1, 0};
                }
            } else if (p[side] < 0) {
                enter = Math.max(enter, q[side] / p[side]);
            } else {
                leave = Math.min(leave, q[side] / p[side]);
            }
        }
        return new double[] {enter, leave};
    }

    /** Even-odd rule. */
    private static boolean encloses(List<Point2> outline, Point2 p) {
        boolean inside = false;
        Point2 a = outline.get(outline.size() - 1);
        for (Point2 b : outline) {
            if (a.y() > p.y() != b.y() > p.y() && p.x() < a.x() + (p.y() - a.y()) / (b.y() - a.y()) * (b.x() - a.x())) {
                inside = !inside;
            }
            a = b;
        }
        return inside;
    }
}
