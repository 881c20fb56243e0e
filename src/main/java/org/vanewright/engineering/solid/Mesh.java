package org.vanewright.engineering.solid;

import java.util.Arrays;

/**
 * A triangle mesh by vertex index, in mm. Triangles run anticlockwise seen from outside. Immutable; says nothing of
 * whether it closes: {@link MeshCheck} does.
 */
public final class Mesh {
    private final double[] coordinates;
    private final int[] corners;

    /**
     * @param coordinates x, y, z of one vertex after the other, mm
     * @param corners three vertex indices a triangle
     * @throws IllegalArgumentException where the lengths are not multiples of three, an index has no vertex, or a
     *     coordinate is not finite
     */
    public Mesh(double[] coordinates, int[] corners) {
        if (coordinates.length % 3 != 0 || corners.length % 3 != 0) {
            throw new IllegalArgumentException("coordinates and corners come in threes");
        }
        if (!Arrays.stream(coordinates).allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("a coordinate is not finite");
        }
        int vertices = coordinates.length / 3;
        if (!Arrays.stream(corners).allMatch(c -> c >= 0 && c < vertices)) {
            throw new IllegalArgumentException("a corner names no vertex");
        }
        this.coordinates = coordinates.clone();
        this.corners = corners.clone();
    }

    public int vertexCount() {
        return coordinates.length / 3;
    }

    public int triangleCount() {
        return corners.length / 3;
    }

    public double x(int vertex) {
        return coordinates[3 * vertex];
    }

    public double y(int vertex) {
        return coordinates[3 * vertex + 1];
    }

    public double z(int vertex) {
        return coordinates[3 * vertex + 2];
    }

    /** Coordinate {@code axis} (0, 1, 2) of a vertex. */
    public double coordinate(int vertex, int axis) {
        return coordinates[3 * vertex + axis];
    }

    /** Vertex index of corner {@code k} (0, 1, 2) of a triangle. */
    public int corner(int triangle, int k) {
        return corners[3 * triangle + k];
    }

    /** Twice the area of a triangle times its outward unit normal: x, y, z in mm². */
    public double[] doubleAreaVector(int triangle) {
        int a = corner(triangle, 0);
        int b = corner(triangle, 1);
        int c = corner(triangle, 2);
        double ux = x(b) - x(a);
        double uy = y(b) - y(a);
        double uz = z(b) - z(a);
        double vx = x(c) - x(a);
        double vy = y(c) - y(a);
        double vz = z(c) - z(a);
        return new double[] {uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx};
    }

    /** Smallest coordinate along an axis; NaN for a mesh without vertices. */
    public double low(int axis) {
        double low = Double.NaN;
        for (int v = 0; v < vertexCount(); v++) {
            low = v == 0 ? coordinate(v, axis) : Math.min(low, coordinate(v, axis));
        }
        return low;
    }

    /** Largest coordinate along an axis; NaN for a mesh without vertices. */
    public double high(int axis) {
        double high = Double.NaN;
        for (int v = 0; v < vertexCount(); v++) {
            high = v == 0 ? coordinate(v, axis) : Math.max(high, coordinate(v, axis));
        }
        return high;
    }
}
