package org.vanewright.engineering.gauge;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.vanewright.engineering.geometry.Point2;

/**
 * The shell laid flat: x is s along the skin, y is v along the span. A slot is a base's outline, grown by the clearance and
 * swept straight aft, so that the gauge can be drawn off forward past bases that are turned either way; the base is pressed
 * against the slot's front and the side that faces it.
 */
final class GaugeOutline {
    /** A tenth of a micrometre: every coordinate lies on this grid, so that lines meet exactly. */
    static final PrecisionModel GRID = new PrecisionModel(1e4);

    static final GeometryFactory PLANE = new GeometryFactory(GRID);

    private static final double FAR_MM = 1000;

    private final GaugeFrame frame;
    private final Gauge gauge;
    private final List<Geometry> slots = new ArrayList<>();
    private final Polygon body;

    GaugeOutline(GaugeFrame frame, Gauge gauge) {
        this.frame = frame;
        this.gauge = gauge;
        Geometry all = PLANE.createPolygon();
        for (Slot slot : gauge.slots()) {
            Geometry opening = opening(slot);
            slots.add(opening);
            all = OverlayNG.overlay(all, opening, OverlayNG.UNION, GRID);
        }
        Geometry left = OverlayNG.overlay(plate(), all, OverlayNG.DIFFERENCE, GRID);
        if (!(left instanceof Polygon polygon) || polygon.getNumInteriorRing() > 0) {
            throw new IllegalStateException("the slots cut the shell apart");
        }
        body = polygon;
    }

    Polygon body() {
        return body;
    }

    /** Where the foremost slot begins. */
    double slotFrontMm() {
        return slots.stream()
                .mapToDouble(g -> g.getEnvelopeInternal().getMinX())
                .min()
                .orElseThrow();
    }

    private Polygon plate() {
        double front = -frame.settings().wrapMm();
        return ring(List.of(
                new Point2(front, -gauge.inboardMm()),
                new Point2(gauge.rearMm(), -gauge.inboardMm()),
                new Point2(gauge.rearMm(), gauge.outboardMm()),
                new Point2(front, gauge.outboardMm())));
    }

    private Geometry opening(Slot slot) {
        List<Point2> outline = new SkinPatch(frame, gauge, slot)
                .onSkin(grown(
                        frame.row().footprint().baseOutline(), frame.settings().clearanceMm()));
        List<Point2> swept = new ArrayList<>(outline);
        outline.forEach(p -> swept.add(p.plus(new Point2(FAR_MM, 0))));
        return PLANE.createMultiPointFromCoords(coordinates(swept)).convexHull();
    }

    private static List<Point2> grown(List<Point2> outline, double mm) {
        if (mm == 0) {
            return outline;
        }
        BufferParameters mitred = new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 5);
        Coordinate[] ring = BufferOp.bufferOp(ring(outline), mm, mitred).getCoordinates();
        List<Point2> points = new ArrayList<>();
        for (Coordinate c : ring) {
            points.add(new Point2(c.x, c.y));
        }
        return points;
    }

    static Polygon ring(List<Point2> points) {
        List<Point2> closed = new ArrayList<>(points);
        closed.add(points.get(0));
        return PLANE.createPolygon(coordinates(closed));
    }

    private static Coordinate[] coordinates(List<Point2> points) {
        return points.stream()
                .map(p -> new Coordinate(GRID.makePrecise(p.x()), GRID.makePrecise(p.y())))
                .toArray(Coordinate[]::new);
    }
}
