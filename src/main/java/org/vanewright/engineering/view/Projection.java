package org.vanewright.engineering.view;

import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.solid.Mesh;

/**
 * Vertices of a mesh in parallel projection. The viewer stands forward, to the left of and above the piece, with all
 * three axes equally foreshortened (isometric axonometry, ISO 5456-3:1996).
 */
final class Projection {
    private static final double[] RIGHT = unit(1, -1, 0);
    /** Towards the viewer: forward, left, up. */
    private static final double[] TOWARDS = unit(-1, -1, 1);

    private static final double[] UP = cross(TOWARDS, RIGHT);

    private final Mesh mesh;

    Projection(Mesh mesh) {
        this.mesh = mesh;
    }

    Point2 at(int vertex) {
        return new Point2(along(vertex, RIGHT), along(vertex, UP));
    }

    /** Distance towards the viewer. */
    double depth(int vertex) {
        return along(vertex, TOWARDS);
    }

    /** Whether a triangle shows its outside. */
    boolean faces(int triangle) {
        double[] n = mesh.doubleAreaVector(triangle);
        return n[0] * TOWARDS[0] + n[1] * TOWARDS[1] + n[2] * TOWARDS[2] > 0;
    }

    private double along(int vertex, double[] axis) {
        return mesh.x(vertex) * axis[0] + mesh.y(vertex) * axis[1] + mesh.z(vertex) * axis[2];
    }

    private static double[] unit(double x, double y, double z) {
        double length = Math.sqrt(x * x + y * y + z * z);
        return new double[] {x / length, y / length, z / length};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }
}
