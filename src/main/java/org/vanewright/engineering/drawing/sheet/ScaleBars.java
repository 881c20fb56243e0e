package org.vanewright.engineering.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.Similarity;
import org.vanewright.engineering.geometry.Point2;

/**
 * Bars that show whether a print has its true size: 100 mm with a tick each 10 mm, and 4 inches with a tick each inch,
 * one above the other. A printer can stretch one direction only, so both directions are needed.
 */
public final class ScaleBars {
    /** Length of the longer bar: 4 inches. */
    public static final double LENGTH_MM = 4 * 25.4;

    /** Across both bars and their lettering. */
    public static final double DEPTH_MM = 12;

    /** From the edge of the pair to the base line of the 100 mm bar; that of the inch bar lies on the edge. */
    static final double METRIC_BAR_MM = 7;

    private static final double TICK_MM = 1.6;
    private static final double END_TICK_MM = 3;
    private static final double LETTER_MM = 2.2;

    private ScaleBars() {}

    /** Both bars from left to right; {@code corner} is the lower left corner of the pair. */
    public static List<Shape> horizontal(Point2 corner) {
        return Similarity.shift(corner.x(), corner.y()).apply(pair());
    }

    /** Both bars from below upward; {@code corner} is the lower left corner of the pair. */
    public static List<Shape> vertical(Point2 corner) {
        Point2 foot = corner.plus(new Point2(DEPTH_MM, 0));
        return Similarity.turnThenShift(90, foot).apply(pair());
    }

    private static List<Shape> pair() {
        List<Shape> shapes = new ArrayList<>(bar(0, 25.4, 4, "4 inches · measure before use"));
        shapes.addAll(bar(METRIC_BAR_MM, 10, 10, "100 mm · measure before use"));
        return shapes;
    }

    private static List<Shape> bar(double y, double stepMm, int steps, String label) {
        double length = stepMm * steps;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Shape.line(Layer.MARK, Pen.THIN, new Point2(0, y), new Point2(length, y)));
        for (int i = 0; i <= steps; i++) {
            double height = i == 0 || i == steps ? END_TICK_MM : TICK_MM;
            Point2 foot = new Point2(i * stepMm, y);
            shapes.add(Shape.line(Layer.MARK, Pen.THIN, foot, foot.plus(new Point2(0, height))));
        }
        Point2 middle = new Point2(length / 2, y + TICK_MM + 1);
        shapes.add(new Shape.Text(Layer.TEXT, label, middle, LETTER_MM, 0, Shape.Align.MIDDLE));
        return shapes;
    }
}
