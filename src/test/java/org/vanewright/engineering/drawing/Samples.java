package org.vanewright.engineering.drawing;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.geometry.Point2;

/** Drawings for tests. */
public final class Samples {
    private Samples() {}

    /** A template-like strip: outline, fold line, centre line and {@code devices} base outlines with numbers. */
    public static Drawing strip(double lengthMm, double widthMm, int devices) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Shape.outline(
                Layer.CUT,
                Pen.THIN,
                Fill.NONE,
                List.of(
                        new Point2(0, 0),
                        new Point2(lengthMm, widthMm * 0.06),
                        new Point2(lengthMm, widthMm * 0.94),
                        new Point2(0, widthMm))));
        shapes.add(Shape.line(
                Layer.FOLD, Pen.DASHED, new Point2(0, widthMm * 0.88), new Point2(lengthMm, widthMm * 0.84)));
        shapes.add(
                Shape.line(Layer.MARK, Pen.CENTRE, new Point2(0, widthMm * 0.5), new Point2(lengthMm, widthMm * 0.5)));
        for (int i = 0; i < devices; i++) {
            Point2 centre = new Point2((i + 0.5) * lengthMm / devices, widthMm * 0.5);
            shapes.add(base(centre, i % 2 == 0 ? 15 : -15));
            shapes.add(new Shape.Text(
                    Layer.TEXT, Integer.toString(i + 1), centre.plus(new Point2(0, 16)), 3, 0, Shape.Align.MIDDLE));
        }
        return new Drawing("Sample strip", "A strip with bases, a fold line and a centre line", shapes);
    }

    /** An outline with elliptic ends as 100 points, 24 mm by 12 mm. */
    private static Shape base(Point2 centre, double angleDeg) {
        List<Point2> points = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            double t = 2 * Math.PI * i / 100;
            points.add(new Point2(12 * Math.cos(t), 6 * Math.sin(t))
                    .rotated(Math.toRadians(90 + angleDeg))
                    .plus(centre));
        }
        return Shape.outline(Layer.CUT, Pen.THIN, Fill.NONE, points);
    }

    /** One of everything, lettering with awkward characters included. */
    public static Drawing everything() {
        return new Drawing(
                "All \"kinds\" <of> & shapes",
                "Lines, a circle and lettering",
                List.of(
                        Shape.outline(Layer.CUT, Pen.THIN, Fill.TINT, new Bounds(0, 0, 120, 80).corners()),
                        Shape.line(Layer.FOLD, Pen.DASHED, new Point2(0, 60), new Point2(120, 60)),
                        Shape.open(
                                Layer.MARK,
                                Pen.CENTRE,
                                List.of(new Point2(0, 40), new Point2(60, 45), new Point2(120, 40))),
                        new Shape.Circle(Layer.MARK, Pen.THICK, Fill.ACCENT, new Point2(30, 30), 10),
                        Shape.outline(
                                Layer.MARK,
                                Pen.FINE,
                                Fill.SOLID,
                                List.of(new Point2(80, 20), new Point2(90, 25), new Point2(80, 30))),
                        text("Angle 15° ± 0.5°, m², 50 % %%d, naïve Ærø – “fillet” 漢 \u0007bell", 70, 0),
                        text("upright & <b>bold</b>", 10, 90)));
    }

    private static Shape text(String text, double y, double rotationDeg) {
        return new Shape.Text(Layer.TEXT, text, new Point2(60, y), 2.5, rotationDeg, Shape.Align.MIDDLE);
    }
}
