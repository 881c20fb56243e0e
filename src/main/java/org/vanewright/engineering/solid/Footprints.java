package org.vanewright.engineering.solid;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.vanewright.engineering.geometry.Point2;

/** The ground the vanes and their fillets take up on the base's upper face. */
final class Footprints {
    /** Least distance of a fillet's foot from the edge of the upper face. */
    static final double EDGE_CLEARANCE_MM = 0.2;
    /** Least distance between the two fillets' feet of a pair. */
    static final double PAIR_CLEARANCE_MM = 0.4;

    /** Below anything that matters; lets a bound itself pass. */
    private static final double ROUNDING_MM = 1e-9;

    private static final GeometryFactory PLANE = new GeometryFactory();

    private final List<List<Point2>> rings;
    private final List<Point2> upper;
    private final int openEdge;

    /** Where the footprints come nearest to an edge of the upper face: by how much too near, and across which edge. */
    record Shortage(double mm, Point2 outward) {}

    Footprints(Dimensions d, BaseShape base, VaneShape vane) {
        rings = new VanePlaces(d).place(vane.at(0));
        upper = base.upper();
        openEdge = d.flush() ? base.outline().rearEdge() : MeshBuilder.NO_EDGE;
    }

    static Footprints of(Dimensions d) {
        return new Footprints(d, new BaseShape(d), new VaneShape(d));
    }

    List<List<Point2>> rings() {
        return rings;
    }

    /** Not positive where all footprints keep their clearance to the edge of the upper face. */
    Shortage shortage() {
        Shortage worst = new Shortage(Double.NEGATIVE_INFINITY, Point2.ORIGIN);
        for (List<Point2> ring : rings) {
            Shortage here = shortage(ring, EDGE_CLEARANCE_MM);
            worst = here.mm() > worst.mm() ? here : worst;
        }
        return worst;
    }

    private Shortage shortage(List<Point2> ring, double clearance) {
        Shortage worst = new Shortage(Double.NEGATIVE_INFINITY, Point2.ORIGIN);
        for (int i = 0; i < upper.size(); i++) {
            Point2 from = upper.get(i);
            Point2 along = upper.get((i + 1) % upper.size()).minus(from);
            Point2 outward = new Point2(along.y(), -along.x()).times(1 / along.norm());
            double reach = ring.stream()
                    .mapToDouble(p -> p.minus(from).dot(outward))
                    .max()
                    .orElseThrow();
            // on a flush base the vane may reach the rear edge, but not pass it
            double mm = reach - ROUNDING_MM + (i == openEdge ? 0 : clearance);
            worst = mm > worst.mm() ? new Shortage(mm, outward) : worst;
        }
        return worst;
    }

    /** Distance between the footprints of a pair; infinite for a single vane, 0 where they overlap. */
    double separation() {
        return rings.size() < 2
                ? Double.POSITIVE_INFINITY
                : polygon(rings.get(0)).distance(polygon(rings.get(1)));
    }

    /** Whether an outline lies on the upper face clear of edge and vanes. */
    boolean isFree(List<Point2> outline, double clearance) {
        if (shortage(outline, clearance).mm() > 0) {
            return false;
        }
        Geometry area = polygon(outline);
        return rings.stream().allMatch(r -> polygon(r).distance(area) >= clearance);
    }

    private static Polygon polygon(List<Point2> ring) {
        Coordinate[] c = new Coordinate[ring.size() + 1];
        for (int i = 0; i <= ring.size(); i++) {
            Point2 p = ring.get(i % ring.size());
            c[i] = new Coordinate(p.x(), p.y());
        }
        return PLANE.createPolygon(c);
    }
}
