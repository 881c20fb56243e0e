package org.vanewright.engineering.template;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;

/** The edge that is cut, and the fold line and flap where the piece registers on the leading edge. */
final class PieceOutline {
    /** Depth of the flap that wraps under the leading edge. */
    static final double FLAP_MM = 25;

    /** The flap narrows towards its edge so that its corners don't catch. */
    private static final double FLAP_TAPER_MM = 6;

    private static final int END_STEPS = 24;

    private final SheetFrame frame;
    private final PieceExtent extent;
    private final boolean flap;

    PieceOutline(SheetFrame frame, PieceExtent extent, Register register) {
        this.frame = frame;
        this.extent = extent;
        this.flap = register == Register.LEADING_EDGE;
    }

    List<Shape> shapes() {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Shape.outline(Layer.CUT, Pen.THIN, Fill.NONE, boundary()));
        if (flap) {
            shapes.add(Shape.open(Layer.FOLD, Pen.DASHED, frontEdge()));
        }
        return shapes;
    }

    /** Closed outline: front edge or flap outboard, outer end, rear edge inboard, inner end. */
    List<Point2> boundary() {
        List<Point2> points = new ArrayList<>(flap ? flapEdge() : frontEdge());
        points.addAll(end(extent.toMm(), true));
        List<Double> samples = extent.samples();
        for (int i = samples.size() - 1; i >= 0; i--) {
            points.add(frame.atArc(samples.get(i), extent.rearArcMm(samples.get(i))));
        }
        points.addAll(end(extent.fromMm(), false));
        return points;
    }

    private List<Point2> frontEdge() {
        return extent.samples().stream()
                .map(s -> frame.atArc(s, extent.frontArcMm(s)))
                .toList();
    }

    private List<Point2> flapEdge() {
        Point2 inner = frame.atArc(extent.fromMm(), 0);
        Point2 outer = frame.atArc(extent.toMm(), 0);
        Point2 along = outer.minus(inner).times(1 / outer.distanceTo(inner));
        Point2 forward = forward(along);
        return List.of(
                inner,
                inner.plus(forward.times(FLAP_MM)).plus(along.times(FLAP_TAPER_MM)),
                outer.plus(forward.times(FLAP_MM)).minus(along.times(FLAP_TAPER_MM)),
                outer);
    }

    /** Square to the leading edge, away from the skin: up the page. */
    private static Point2 forward(Point2 along) {
        Point2 square = new Point2(-along.y(), along.x());
        return square.y() >= 0 ? square : square.times(-1);
    }

    /** Points strictly between the two edges along one end of the piece. */
    private List<Point2> end(double stationMm, boolean rearward) {
        double front = extent.frontArcMm(stationMm);
        double rear = extent.rearArcMm(stationMm);
        List<Point2> points = new ArrayList<>(END_STEPS);
        for (int i = 1; i < END_STEPS; i++) {
            double part = (double) i / END_STEPS;
            double arc = rearward ? front + (rear - front) * part : rear - (rear - front) * part;
            points.add(frame.atArc(stationMm, arc));
        }
        return points;
    }
}
