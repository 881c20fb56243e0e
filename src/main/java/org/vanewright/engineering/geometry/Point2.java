package org.vanewright.engineering.geometry;

/**
 * A point or vector in a plane.
 *
 * @param x first coordinate, in the unit of its context (mm on sheets and drawings)
 * @param y second coordinate, same unit
 */
public record Point2(double x, double y) {
    public static final Point2 ORIGIN = new Point2(0, 0);

    public Point2 plus(Point2 other) {
        return new Point2(x + other.x, y + other.y);
    }

    public Point2 minus(Point2 other) {
        return new Point2(x - other.x, y - other.y);
    }

    public Point2 times(double factor) {
        return new Point2(x * factor, y * factor);
    }

    public double dot(Point2 other) {
        return x * other.x + y * other.y;
    }

    /** z component of the cross product; positive where {@code other} lies anticlockwise of this. */
    public double cross(Point2 other) {
        return x * other.y - y * other.x;
    }

    public double norm() {
        return Math.hypot(x, y);
    }

    public double distanceTo(Point2 other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    /** Turned about the origin, anticlockwise positive. */
    public Point2 rotated(double angleRad) {
        double c = Math.cos(angleRad);
        double s = Math.sin(angleRad);
        return new Point2(c * x - s * y, s * x + c * y);
    }
}
