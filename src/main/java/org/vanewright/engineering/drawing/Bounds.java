package org.vanewright.engineering.drawing;

import java.util.List;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/** An upright rectangle in mm; of shapes, the rectangle around their lines (pen widths not counted) and lettering. */
public record Bounds(double minXMm, double minYMm, double maxXMm, double maxYMm) {
    private static final double MAX_COORDINATE_MM = 1e6;

    public Bounds {
        if (!(minXMm <= maxXMm) || !(minYMm <= maxYMm)) {
            throw new IllegalArgumentException(
                    "not a rectangle: " + minXMm + " to " + maxXMm + ", " + minYMm + " to " + maxYMm);
        }
    }

    /**
     * Around everything on a drawing.
     *
     * @throws InvalidInputException if the drawing has no shapes, or a coordinate is not finite or over 1 km
     */
    public static Bounds of(Drawing drawing) {
        return of(drawing.shapes());
    }

    /**
     * Around all the shapes.
     *
     * @throws InvalidInputException if there are no shapes, or a coordinate is not finite or over 1 km
     */
    public static Bounds of(List<? extends Shape> shapes) {
        return shapes.stream()
                .map(Bounds::of)
                .reduce(Bounds::union)
                .orElseThrow(() -> new InvalidInputException(
                        new FieldProblem("shapes", "none", "a drawing with at least one shape")));
    }

    /**
     * Around one shape.
     *
     * @throws InvalidInputException if a coordinate is not finite or over 1 km
     */
    public static Bounds of(Shape shape) {
        if (shape instanceof Shape.Polyline line) {
            return around(line.points());
        }
        if (shape instanceof Shape.Circle circle) {
            double r = circle.radiusMm();
            Point2 reach = new Point2(r, r);
            return around(List.of(circle.centre().minus(reach), circle.centre().plus(reach)));
        }
        return ofText((Shape.Text) shape);
    }

    private static Bounds ofText(Shape.Text text) {
        double em = text.heightMm() / Lettering.CAP_HEIGHT_PER_EM;
        double width = Lettering.widthMm(text.text(), text.heightMm());
        double start = switch (text.align()) {
            case START -> 0;
            case MIDDLE -> -width / 2;
            case END -> -width;
        };
        double low = -Lettering.DESCENT_PER_EM * em;
        double high = Lettering.ASCENT_PER_EM * em;
        Similarity place = Similarity.turnThenShift(text.rotationDeg(), text.at());
        return around(List.of(
                place.apply(new Point2(start, low)),
                place.apply(new Point2(start + width, low)),
                place.apply(new Point2(start, high)),
                place.apply(new Point2(start + width, high))));
    }

    private static Bounds around(List<Point2> points) {
        double minX = Double.POSITIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (Point2 p : points) {
            // written so that NaN fails too
            if (!(Math.abs(p.x()) <= MAX_COORDINATE_MM && Math.abs(p.y()) <= MAX_COORDINATE_MM)) {
                throw new InvalidInputException(
                        new FieldProblem("shapes", p.toString(), "coordinates within 1 km of the origin"));
            }
            minX = Math.min(minX, p.x());
            minY = Math.min(minY, p.y());
            maxX = Math.max(maxX, p.x());
            maxY = Math.max(maxY, p.y());
        }
        return new Bounds(minX, minY, maxX, maxY);
    }

    public double widthMm() {
        return maxXMm - minXMm;
    }

    public double heightMm() {
        return maxYMm - minYMm;
    }

    public Point2 centre() {
        return new Point2((minXMm + maxXMm) / 2, (minYMm + maxYMm) / 2);
    }

    public Bounds union(Bounds other) {
        return new Bounds(
                Math.min(minXMm, other.minXMm),
                Math.min(minYMm, other.minYMm),
                Math.max(maxXMm, other.maxXMm),
                Math.max(maxYMm, other.maxYMm));
    }

    /** Grown by {@code mm} on every side. */
    public Bounds grown(double mm) {
        return new Bounds(minXMm - mm, minYMm - mm, maxXMm + mm, maxYMm + mm);
    }

    public Bounds shifted(double dxMm, double dyMm) {
        return new Bounds(minXMm + dxMm, minYMm + dyMm, maxXMm + dxMm, maxYMm + dyMm);
    }

    /** Whether the two have a point in common, edges included. */
    public boolean touches(Bounds other) {
        return minXMm <= other.maxXMm && other.minXMm <= maxXMm && minYMm <= other.maxYMm && other.minYMm <= maxYMm;
    }

    public boolean contains(Point2 p) {
        return p.x() >= minXMm && p.x() <= maxXMm && p.y() >= minYMm && p.y() <= maxYMm;
    }

    public boolean contains(Bounds other) {
        return other.minXMm >= minXMm && other.maxXMm <= maxXMm && other.minYMm >= minYMm && other.maxYMm <= maxYMm;
    }

    /** Its four corners, anticlockwise from the lower left. */
    public List<Point2> corners() {
        return List.of(
                new Point2(minXMm, minYMm),
                new Point2(maxXMm, minYMm),
                new Point2(maxXMm, maxYMm),
                new Point2(minXMm, maxYMm));
    }
}
