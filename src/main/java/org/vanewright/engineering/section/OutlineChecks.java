package org.vanewright.engineering.section;

import java.util.Arrays;
import java.util.OptionalInt;
import org.locationtech.jts.algorithm.Area;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.operation.valid.IsSimpleOp;
import org.vanewright.engineering.geometry.Point2;

/** What every outline must satisfy; points run trailing edge → upper → leading edge → lower → trailing edge. */
final class OutlineChecks {
    static final int FEWEST_POINTS = 11;
    static final int MOST_POINTS = 2_000;
    /** Widest trailing edge, in chords: beyond it the outline is not a whole section. */
    static final double WIDEST_TRAILING_EDGE = 0.25;

    private OutlineChecks() {}

    /** Index of the point after which the closed outline crosses or touches itself; empty where it does not. */
    static OptionalInt selfCrossing(Point2[] points) {
        Coordinate[] ring = closed(points);
        IsSimpleOp simple = new IsSimpleOp(new GeometryFactory().createLinearRing(ring));
        if (simple.isSimple()) {
            return OptionalInt.empty();
        }
        Coordinate where = simple.getNonSimpleLocation();
        int nearest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 1 < ring.length; i++) {
            double distance = new LineSegment(ring[i], ring[i + 1]).distance(where);
            if (distance < least) {
                least = distance;
                nearest = i;
            }
        }
        return OptionalInt.of(nearest);
    }

    /** Area inside, positive when the points run anticlockwise as they must. */
    static double signedArea(Point2[] points) {
        return -Area.ofRingSigned(closed(points));
    }

    private static Coordinate[] closed(Point2[] points) {
        Coordinate[] ring =
                Arrays.stream(points).map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
        if (ring[0].equals2D(ring[ring.length - 1])) {
            return ring;
        }
        Coordinate[] joined = Arrays.copyOf(ring, ring.length + 1);
        joined[ring.length] = ring[0].copy();
        return joined;
    }
}
