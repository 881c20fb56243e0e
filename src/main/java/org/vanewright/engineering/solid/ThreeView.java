package org.vanewright.engineering.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.Shape.Align;
import org.vanewright.engineering.geometry.Point2;

/**
 * The dimensioned three-view drawing of a device in third-angle projection: top view above, side view below it, front
 * view to the left of the side view. Sheet mm, origin at the side view's foot under the middle of the base.
 */
final class ThreeView {
    private static final double[] SCALES = {10, 5, 2, 1, 0.5, 0.2};
    /** Room on an A4 sheet on its side for the three views, without dimensions between them. */
    private static final double ROOM_WIDE_MM = 195;

    private static final double ROOM_HIGH_MM = 95;
    private static final double BETWEEN_MM = 28;
    private static final double ABOVE_SIDE_VIEW_MM = 22;
    private static final double BELOW_SIDE_VIEW_MM = 22;
    /** A4 on its side less 10 mm all round. */
    private static final double FRAME_WIDE_MM = 277;

    private static final double FRAME_HIGH_MM = 190;
    private static final double LINE_MM = 4.8;

    private final Dimensions d;
    private final DeviceOutlines outlines;
    private final List<Shape> shapes = new ArrayList<>();
    private final DimensionLines dimensions = new DimensionLines(shapes);
    private final double scale;

    ThreeView(Dimensions d) {
        this.d = d;
        outlines = new DeviceOutlines(d);
        scale = scale(d.baseLength() + d.baseWidth(), d.baseWidth() + d.height() + outlines.upperZ());
    }

    private static double scale(double wide, double high) {
        for (double scale : SCALES) {
            if (wide * scale <= ROOM_WIDE_MM && high * scale <= ROOM_HIGH_MM) {
                return scale;
            }
        }
        return SCALES[SCALES.length - 1];
    }

    Drawing draw(String name) {
        sideView();
        topView(new Point2(0, high() + ABOVE_SIDE_VIEW_MM + d.baseWidth() / 2 * scale));
        frontView(new Point2(-d.baseLength() / 2 * scale - BETWEEN_MM - d.baseWidth() / 2 * scale, 0));
        List<String> notes = new ArrayList<>(DrawingNotes.of(d));
        notes.add("Scale " + ratio() + "   Dimensions in mm   Third-angle projection");
        double line = lowest() - BELOW_SIDE_VIEW_MM;
        double left = frame(line - LINE_MM * notes.size()) + LINE_MM;
        dimensions.text(name, new Point2(left, line), 5, Align.START);
        line -= 1.5;
        for (String note : notes) {
            line -= LINE_MM;
            dimensions.text(note, new Point2(left, line), DimensionLines.TEXT_MM, Align.START);
        }
        return new Drawing(name, "Three-view drawing of " + name + ". " + String.join(". ", notes) + ".", shapes);
    }

    /** Sheet height of the lowest point of the side view. */
    private double lowest() {
        return scale
                * outlines.baseFromTheSide().stream()
                        .mapToDouble(Point2::y)
                        .min()
                        .orElseThrow();
    }

    /** Round everything, so that the sheet is A4 whatever the device, the views in its middle; gives its left edge. */
    private double frame(double lastLine) {
        double left = -(d.baseLength() / 2 + d.baseWidth()) * scale - BETWEEN_MM;
        double right = d.baseLength() / 2 * scale + 18;
        double top = high() + ABOVE_SIDE_VIEW_MM + d.baseWidth() * scale + 13;
        double x = (left + right - FRAME_WIDE_MM) / 2;
        double y = (top + lastLine - FRAME_HIGH_MM) / 2;
        shapes.add(Shape.outline(
                Layer.MARK,
                Pen.THIN,
                Fill.NONE,
                List.of(
                        new Point2(x, y),
                        new Point2(x + FRAME_WIDE_MM, y),
                        new Point2(x + FRAME_WIDE_MM, y + FRAME_HIGH_MM),
                        new Point2(x, y + FRAME_HIGH_MM))));
        return x;
    }

    private String ratio() {
        return scale >= 1 ? DimensionLines.figure(scale) + ":1" : "1:" + DimensionLines.figure(1 / scale);
    }

    private double high() {
        return (outlines.upperZ() + d.height()) * scale;
    }

    private void sideView() {
        UnaryOperator<Point2> at = p -> p.times(scale);
        outlines.vaneSilhouettes(Point2::x).forEach(v -> outline(v, at, Pen.THICK, Fill.TINT));
        outline(outlines.baseFromTheSide(), at, Pen.THICK, Fill.TINT);
        outlines.mark()
                .ifPresent(m -> outline(
                        List.of(
                                new Point2(m.foot().get(0).x(), outlines.upperZ()),
                                new Point2(m.foot().get(1).x(), outlines.upperZ()),
                                new Point2(m.top().get(1).x(), outlines.upperZ() + IndexMark.HEIGHT_MM),
                                new Point2(m.top().get(0).x(), outlines.upperZ() + IndexMark.HEIGHT_MM)),
                        at,
                        Pen.THIN,
                        Fill.SOLID));
        double rear = d.baseLength() / 2;
        double trailing = rear - d.inset();
        Point2 top = new Point2(trailing, outlines.upperZ() + d.height()).times(scale);
        Point2 foot = new Point2(rear, outlines.upperZ()).times(scale);
        dimensions.upright(foot, top, rear * scale + 9, DimensionLines.figure(d.height()));
        double underside = d.undersideCurvature() > 0 ? 0 : outlines.upperZ() - d.baseThickness();
        double thin = d.undersideCurvature() < 0 ? -rear : 0;
        dimensions.upright(
                new Point2(thin, underside).times(scale),
                new Point2(thin, outlines.upperZ()).times(scale),
                -rear * scale - 9,
                DimensionLines.figure(d.baseThickness()));
        dimensions.across(
                new Point2(-rear, outlines.upperZ()).times(scale),
                foot,
                lowest() - 9,
                DimensionLines.figure(d.baseLength()));
    }

    private void topView(Point2 centre) {
        UnaryOperator<Point2> at = p -> p.times(scale).plus(centre);
        outline(outlines.base(), at, Pen.THICK, Fill.TINT);
        if (d.bevel() > 0) {
            outline(outlines.upperFace(), at, Pen.THIN, Fill.NONE);
        }
        if (d.fillet() > 0) {
            outlines.fillets().forEach(f -> outline(f, at, Pen.THIN, Fill.NONE));
        }
        outlines.roots().forEach(r -> outline(r, at, Pen.THICK, Fill.ACCENT));
        outlines.tips().forEach(t -> outline(t, at, Pen.THIN, Fill.NONE));
        outlines.mark().ifPresent(m -> outline(m.foot(), at, Pen.THIN, Fill.SOLID));
        double a = d.baseLength() / 2;
        double w = d.baseWidth() / 2;
        Point2 front = at.apply(new Point2(-a, 0));
        shapes.add(Shape.line(
                Layer.MARK,
                Pen.CENTRE,
                front.minus(new Point2(5, 0)),
                at.apply(new Point2(a, 0)).plus(new Point2(5, 0))));
        forwardArrow(front.minus(new Point2(22, 0)));
        dimensions.upright(
                at.apply(new Point2(a, -w)),
                at.apply(new Point2(a, w)),
                centre.x() + a * scale + 14,
                DimensionLines.figure(d.baseWidth()));
        vaneLength(at, centre.y() + w * scale + 8);
        if (d.paired()) {
            double middle = a - d.inset() - d.length() / 2 * Math.cos(d.toeIn());
            dimensions.upright(
                    at.apply(new Point2(middle, -d.gap() / 2)),
                    at.apply(new Point2(middle, d.gap() / 2)),
                    centre.x() + a * scale + 7,
                    DimensionLines.figure(d.gap()));
        }
    }

    private void vaneLength(UnaryOperator<Point2> at, double lineY) {
        double rear = d.baseLength() / 2 - d.inset();
        double run = d.length() * Math.cos(d.toeIn());
        double y = d.baseWidth() / 2;
        dimensions.across(
                at.apply(new Point2(rear - run, y)), at.apply(new Point2(rear, y)), lineY, DimensionLines.figure(run));
        if (!d.flush()) {
            dimensions.across(
                    at.apply(new Point2(rear, y)),
                    at.apply(new Point2(d.baseLength() / 2, y)),
                    lineY,
                    DimensionLines.figure(d.inset()));
        }
    }

    private void forwardArrow(Point2 tip) {
        dimensions.arrow(tip, new Point2(1, 0));
        shapes.add(Shape.line(Layer.MARK, Pen.THIN, tip, tip.plus(new Point2(14, 0))));
        dimensions.text("forward", tip.plus(new Point2(7, 1.2)), DimensionLines.TEXT_MM, Align.MIDDLE);
    }

    /** Seen from the front, the device's y runs to the left. */
    private void frontView(Point2 foot) {
        UnaryOperator<Point2> at = p -> new Point2(-p.x() * scale, p.y() * scale).plus(foot);
        List<List<Point2>> vanes = outlines.vaneSilhouettes(Point2::y);
        vanes.forEach(v -> outline(v, at, Pen.THICK, Fill.TINT));
        if (d.footed()) {
            outline(frontOfVane(), at, Pen.THIN, Fill.NONE);
        }
        outline(outlines.baseFromTheEnd(), at, Pen.THICK, Fill.TINT);
        double top = outlines.upperZ() + d.height();
        shapes.add(Shape.line(
                Layer.MARK,
                Pen.CENTRE,
                foot.minus(new Point2(0, 5)),
                at.apply(new Point2(0, top)).plus(new Point2(0, 5))));
        if (!d.paired()) {
            double half = Math.max(d.thickness(), d.footWidth()) / 2;
            dimensions.across(
                    at.apply(new Point2(half, top)),
                    at.apply(new Point2(-half, top)),
                    high() + 7,
                    DimensionLines.figure(2 * half));
        }
    }

    /** The vane itself ahead of its wider foot. */
    private List<Point2> frontOfVane() {
        double half = d.thickness() / 2;
        double top = outlines.upperZ() + d.height();
        return List.of(
                new Point2(-half, outlines.upperZ()),
                new Point2(half, outlines.upperZ()),
                new Point2(half, top),
                new Point2(-half, top));
    }

    private void outline(List<Point2> points, UnaryOperator<Point2> at, Pen pen, Fill fill) {
        shapes.add(Shape.outline(Layer.MARK, pen, fill, points.stream().map(at).toList()));
    }
}
