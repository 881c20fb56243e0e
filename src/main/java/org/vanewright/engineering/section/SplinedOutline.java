package org.vanewright.engineering.section;

import org.vanewright.engineering.geometry.Point2;

/**
 * An outline through given points with its leading edge found: the place on the spline farthest from the middle of the
 * trailing edge.
 *
 * @param spline through the points
 * @param leadingEdgeAt spline parameter of the leading edge
 * @param trailingEdge middle of the trailing edge
 */
record SplinedOutline(LoopSpline spline, double leadingEdgeAt, Point2 trailingEdge) {
    static SplinedOutline through(Point2[] points) {
        LoopSpline spline = LoopSpline.through(points);
        Point2 trailing = points[0].plus(points[points.length - 1]).times(0.5);
        int farthest = farthestFrom(trailing, points);
        double low = spline.knot(Math.max(0, farthest - 1));
        double high = spline.knot(Math.min(points.length - 1, farthest + 1));
        return new SplinedOutline(
                spline, farthestBetween(spline, trailing, low, high, spline.knot(farthest)), trailing);
    }

    /** Index of the point farthest from a place. */
    static int farthestFrom(Point2 place, Point2[] points) {
        int farthest = 0;
        for (int i = 1; i < points.length; i++) {
            if (points[i].distanceTo(place) > points[farthest].distanceTo(place)) {
                farthest = i;
            }
        }
        return farthest;
    }

    Point2 leadingEdge() {
        CurvePoint p = spline.at(leadingEdgeAt);
        return new Point2(p.x(), p.y());
    }

    SkinSide side(SurfaceSide side) {
        return new SkinSide(side, new SplineSide(spline, leadingEdgeAt, side));
    }

    private static double farthestBetween(LoopSpline spline, Point2 from, double low, double high, double knot) {
        double before = recession(spline, from, low);
        double after = recession(spline, from, high);
        if (before <= 0 || after >= 0) {
            return knot;
        }
        return ArcLengthTable.solver()
                .solve(ArcLengthTable.MAX_EVALUATIONS, s -> recession(spline, from, s), low, high);
    }

    /** Half the rate at which the squared distance grows along the spline. */
    private static double recession(LoopSpline spline, Point2 from, double s) {
        CurvePoint p = spline.at(s);
        return (p.x() - from.x()) * p.dx() + (p.y() - from.y()) * p.dy();
    }
}
