package org.vanewright.engineering.solid;

import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.Shape.Align;
import org.vanewright.engineering.geometry.Point2;

/**
 * Dimension lines in the manner of ISO 129-1: extension lines past the object, arrows, the figure above the line and
 * read from below or from the right. All in sheet mm.
 */
final class DimensionLines {
    static final double TEXT_MM = 2.5;
    private static final double GAP_MM = 1;
    private static final double ARROW_MM = 2.5;
    private static final double ARROW_HALF_MM = 0.45;

    private final List<Shape> sheet;

    DimensionLines(List<Shape> sheet) {
        this.sheet = sheet;
    }

    /** Between two points, measured along x; the line lies at sheet height {@code lineY}. */
    void across(Point2 from, Point2 to, double lineY, String text) {
        measure(from, to, new Point2(from.x(), lineY), new Point2(to.x(), lineY), text);
    }

    /** Between two points, measured along y; the line lies at sheet distance {@code lineX}. */
    void upright(Point2 from, Point2 to, double lineX, String text) {
        measure(from, to, new Point2(lineX, from.y()), new Point2(lineX, to.y()), text);
    }

    private void measure(Point2 from, Point2 to, Point2 a, Point2 b, String text) {
        extension(from, a);
        extension(to, b);
        double length = a.distanceTo(b);
        Point2 along = b.minus(a).times(1 / length);
        double written = text.length() * TEXT_MM * 0.75;
        boolean roomy = length > Math.max(2.5 * ARROW_MM, written);
        // where there is no room between them, the arrows point inward from outside
        double tail = roomy ? 0 : 2 * ARROW_MM;
        Point2 end = roomy ? b : b.plus(along.times(tail + written));
        sheet.add(Shape.line(Layer.MARK, Pen.FINE, a.minus(along.times(tail)), end));
        arrow(a, along.times(roomy ? 1 : -1));
        arrow(b, along.times(roomy ? -1 : 1));
        Point2 up = new Point2(-along.y(), along.x());
        Point2 middle = roomy ? a.plus(b).times(0.5) : b.plus(along.times(tail + written / 2));
        double angle = Math.toDegrees(Math.atan2(along.y(), along.x()));
        sheet.add(new Shape.Text(Layer.TEXT, text, middle.plus(up.times(0.8)), TEXT_MM, angle, Align.MIDDLE));
    }

    private void extension(Point2 from, Point2 to) {
        double length = from.distanceTo(to);
        if (length > 2 * GAP_MM) {
            Point2 along = to.minus(from).times(1 / length);
            sheet.add(Shape.line(Layer.MARK, Pen.FINE, from.plus(along.times(GAP_MM)), to.plus(along.times(GAP_MM))));
        }
    }

    /** A solid arrow head with its point at {@code tip}, its body lying towards {@code body}. */
    void arrow(Point2 tip, Point2 body) {
        Point2 back = tip.plus(body.times(ARROW_MM));
        Point2 side = new Point2(-body.y(), body.x()).times(ARROW_HALF_MM);
        sheet.add(Shape.outline(Layer.MARK, Pen.FINE, Fill.SOLID, List.of(tip, back.plus(side), back.minus(side))));
    }

    void text(String text, Point2 at, double heightMm, Align align) {
        sheet.add(new Shape.Text(Layer.TEXT, text, at, heightMm, 0, align));
    }

    /** A length with at most two decimals and no trailing noughts. */
    static String figure(double mm) {
        String text = String.format(Locale.ROOT, "%.2f", mm);
        return text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
