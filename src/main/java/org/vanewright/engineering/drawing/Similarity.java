package org.vanewright.engineering.drawing;

import java.util.List;
import org.vanewright.engineering.geometry.Point2;

/**
 * Places a drawing on a sheet: scaled, turned about the origin, then shifted. Pens keep their widths.
 *
 * @param scale drawn length over true length, more than 0
 * @param rotationDeg anticlockwise
 * @param shiftMm where the origin goes, in mm on the sheet
 */
public record Similarity(double scale, double rotationDeg, Point2 shiftMm) {
    public static final Similarity NONE = new Similarity(1, 0, Point2.ORIGIN);

    public Similarity {
        if (!(scale > 0)) {
            throw new IllegalArgumentException("scale must be positive: " + scale);
        }
    }

    public static Similarity shift(double dxMm, double dyMm) {
        return new Similarity(1, 0, new Point2(dxMm, dyMm));
    }

    public static Similarity turnThenShift(double rotationDeg, Point2 shiftMm) {
        return new Similarity(1, rotationDeg, shiftMm);
    }

    public Point2 apply(Point2 p) {
        Point2 turned = rotationDeg == 0 ? p : p.rotated(Math.toRadians(rotationDeg));
        return turned.times(scale).plus(shiftMm);
    }

    public Shape apply(Shape shape) {
        if (shape instanceof Shape.Polyline line) {
            List<Point2> points = line.points().stream().map(this::apply).toList();
            return new Shape.Polyline(line.layer(), line.pen(), line.fill(), points, line.closed());
        }
        if (shape instanceof Shape.Circle circle) {
            return new Shape.Circle(
                    circle.layer(), circle.pen(), circle.fill(), apply(circle.centre()), circle.radiusMm() * scale);
        }
        Shape.Text text = (Shape.Text) shape;
        return new Shape.Text(
                text.layer(),
                text.text(),
                apply(text.at()),
                text.heightMm() * scale,
                text.rotationDeg() + rotationDeg,
                text.align());
    }

    public List<Shape> apply(List<? extends Shape> shapes) {
        return shapes.stream().map(this::apply).toList();
    }
}
