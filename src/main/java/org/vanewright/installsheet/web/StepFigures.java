package org.vanewright.installsheet.web;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SkinPoint;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.layout.LayoutPlan;

/**
 * The small drawings beside the steps, made from the nose of the layout's own wing and its own base: not to scale with each
 * other.
 */
final class StepFigures {
    private static final int STEPS = 60;
    private static final double STAND_OFF_MM = 0.9;

    private final Section section;
    private final boolean upper;
    private final SurfaceSide side;
    /** In chords. */
    private final double rowArc;

    private final double shownArc;
    private final List<Point2> base;
    private final List<List<Point2>> vanes;
    private final double angleDeg;

    private StepFigures(WingPanel panel, Station station, TemplateRow row) {
        section = panel.innerSection();
        side = station.side();
        upper = side == SurfaceSide.UPPER;
        double most = section.arcLength(side);
        rowArc = Math.min(station.arcMm() / station.chordMm(), most);
        shownArc = Math.min(most, Math.max(rowArc * 1.5, 0.15));
        base = row.plan().footprint().baseOutline();
        vanes = row.plan().footprint().vaneOutlines();
        angleDeg = station.angleDeg();
    }

    /** From the middle of the layout's first row. */
    static StepFigures of(LayoutPlan plan) {
        LayoutPlan.SurfacePlan surface = plan.surfaces().get(0);
        TemplateRow row = surface.rows().get(0);
        List<Station> stations = surface.placement().stations().stream()
                .filter(s -> s.row() == row.plan().index())
                .toList();
        Station middle = stations.get(stations.size() / 2);
        return new StepFigures(surface.shape().panels().get(middle.panel()), middle, row);
    }

    /** The template's fold lies on the leading edge. */
    List<Shape> register(Point2 corner, double width, double height) {
        List<Shape> shapes = new ArrayList<>();
        Frame frame = nose(shapes, corner, width, height);
        List<Point2> sheet = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            sheet.add(frame.off(-0.35 * shownArc + 1.3 * shownArc * i / STEPS, STAND_OFF_MM));
        }
        shapes.add(Shape.open(Layer.MARK, Pen.THICK, sheet));
        Point2 edge = frame.off(0, STAND_OFF_MM);
        arrow(shapes, edge.minus(new Point2(9, 0)), edge.minus(new Point2(1, 0)));
        return shapes;
    }

    /** A base in its cut-out, the liner half drawn off. */
    List<Shape> peel(Point2 corner, double width, double height) {
        List<Shape> shapes = new ArrayList<>();
        double reach = base.stream().mapToDouble(Point2::norm).max().orElse(1);
        double scale = Math.min(width / 2.6, height / 2.2) / reach;
        Point2 middle = corner.plus(new Point2(width / 2, height / 2));
        UnaryOperator<Point2> at =
                p -> p.times(scale).rotated(Math.toRadians(-90 + angleDeg)).plus(middle);
        shapes.add(Shape.outline(
                Layer.MARK,
                Pen.DASHED,
                Fill.NONE,
                base.stream().map(p -> at.apply(p.times(1.08))).toList()));
        shapes.add(Shape.outline(
                Layer.MARK, Pen.THICK, Fill.TINT, base.stream().map(at).toList()));
        for (List<Point2> vane : vanes) {
            shapes.add(Shape.outline(
                    Layer.MARK, Pen.THIN, Fill.ACCENT, vane.stream().map(at).toList()));
        }
        double rear = base.stream().mapToDouble(Point2::x).max().orElse(0);
        double half = base.stream().mapToDouble(Point2::y).max().orElse(0);
        List<Point2> liner = List.of(
                at.apply(new Point2(rear * 0.4, half)),
                at.apply(new Point2(rear * 0.1, half * 2.1)),
                at.apply(new Point2(rear * 0.6, half * 2.2)),
                at.apply(new Point2(rear * 0.85, half * 0.8)));
        shapes.add(Shape.outline(Layer.MARK, Pen.THIN, Fill.NONE, liner));
        arrow(shapes, at.apply(new Point2(rear * 0.4, half * 2.2)), at.apply(new Point2(rear * 0.2, half * 3.2)));
        return shapes;
    }

    /** Straight down on the base, never on the vane. */
    List<Shape> press(Point2 corner, double width, double height) {
        List<Shape> shapes = new ArrayList<>();
        Frame frame = nose(shapes, corner, width, height);
        double half = Math.max(0.012, 13.0 / 1000);
        List<Point2> plate = new ArrayList<>();
        for (double s : new double[] {rowArc - half, rowArc + half}) {
            plate.add(frame.off(s, 0.2));
        }
        plate.add(frame.off(rowArc + half, 1.4));
        plate.add(frame.off(rowArc - half, 1.4));
        shapes.add(Shape.outline(Layer.MARK, Pen.THIN, Fill.SOLID, plate));
        shapes.add(Shape.outline(
                Layer.MARK,
                Pen.THIN,
                Fill.ACCENT,
                List.of(
                        frame.off(rowArc - 0.5 * half, 1.4),
                        frame.off(rowArc + 0.5 * half, 1.4),
                        frame.off(rowArc + 0.5 * half, 5),
                        frame.off(rowArc - 0.5 * half, 5))));
        for (double s : new double[] {rowArc - 0.8 * half, rowArc + 0.8 * half}) {
            arrow(shapes, frame.off(s, 10), frame.off(s, 1.9));
        }
        return shapes;
    }

    private final class Frame {
        private final double scale;
        private final Point2 origin;

        Frame(Point2 corner, double width, double height) {
            double low = 0;
            double high = 0;
            double right = 0;
            double left = 0;
            for (int i = 0; i <= STEPS; i++) {
                SkinPoint p = skin(-shownArc + 2 * shownArc * i / STEPS);
                low = Math.min(low, p.y());
                high = Math.max(high, p.y());
                right = Math.max(right, p.x());
                left = Math.min(left, p.x());
            }
            scale = Math.min((width - 14) / (right - left), (height - 14) / (high - low));
            double above = upper ? 11 : 3;
            origin = corner.plus(new Point2(11 - left * scale, height - above - high * scale));
        }

        Point2 off(double s, double mm) {
            SkinPoint p = skin(s);
            boolean onUpper = s >= 0 == upper;
            double out = onUpper ? 1 : -1;
            return new Point2(p.x() * scale - out * p.tangentY() * mm, p.y() * scale + out * p.tangentX() * mm)
                    .plus(origin);
        }
    }

    private SkinPoint skin(double s) {
        SurfaceSide on = s >= 0 ? side : upper ? SurfaceSide.LOWER : SurfaceSide.UPPER;
        return section.atArcLength(on, Math.min(Math.abs(s), section.arcLength(on)));
    }

    private Frame nose(List<Shape> shapes, Point2 corner, double width, double height) {
        Frame frame = new Frame(corner, width, height);
        List<Point2> outline = new ArrayList<>();
        for (int i = 0; i <= 2 * STEPS; i++) {
            outline.add(frame.off(-shownArc + shownArc * i / STEPS, 0));
        }
        shapes.add(Shape.outline(Layer.MARK, Pen.THIN, Fill.TINT, outline));
        return frame;
    }

    private static void arrow(List<Shape> shapes, Point2 from, Point2 tip) {
        Point2 along = tip.minus(from).times(1 / tip.distanceTo(from));
        Point2 across = new Point2(-along.y(), along.x());
        Point2 foot = tip.minus(along.times(2.4));
        shapes.add(Shape.line(Layer.MARK, Pen.THIN, from, foot));
        shapes.add(Shape.outline(
                Layer.MARK,
                Pen.THIN,
                Fill.SOLID,
                List.of(tip, foot.plus(across.times(0.8)), foot.minus(across.times(0.8)))));
    }
}
