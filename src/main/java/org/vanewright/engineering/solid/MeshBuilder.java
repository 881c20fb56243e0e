package org.vanewright.engineering.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.vanewright.engineering.geometry.Point2;

/** Collects vertices and faces; a vertex is made once and shared by index, so that faces meet without seams. */
final class MeshBuilder {
    /** No edge is left out. */
    static final int NO_EDGE = -1;

    private double[] coordinates = new double[3072];
    private int vertices;
    private int[] corners = new int[3072];
    private int used;

    int vertex(double x, double y, double z) {
        if (3 * vertices == coordinates.length) {
            coordinates = Arrays.copyOf(coordinates, 2 * coordinates.length);
        }
        // adding zero turns −0 into 0, so that equal coordinates are equal bit for bit
        coordinates[3 * vertices] = x + 0.0;
        coordinates[3 * vertices + 1] = y + 0.0;
        coordinates[3 * vertices + 2] = z + 0.0;
        return vertices++;
    }

    /** One vertex per point, each at its own height. */
    int[] ring(List<Point2> points, ToDoubleFunction<Point2> height) {
        return points.stream()
                .mapToInt(p -> vertex(p.x(), p.y(), height.applyAsDouble(p)))
                .toArray();
    }

    void triangle(int a, int b, int c) {
        if (used == corners.length) {
            corners = Arrays.copyOf(corners, 2 * corners.length);
        }
        corners[used++] = a;
        corners[used++] = b;
        corners[used++] = c;
    }

    /**
     * The faces between two rings of equally many vertices, both anticlockwise seen from the side of {@code upper}.
     *
     * @param leftOut the edge that gets no face, from vertex {@code leftOut} to the next; or {@link #NO_EDGE}
     */
    void band(int[] lower, int[] upper, int leftOut) {
        int n = lower.length;
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            if (i != leftOut) {
                triangle(lower[i], lower[j], upper[j]);
                triangle(lower[i], upper[j], upper[i]);
            }
        }
    }

    /** A face in a plane of constant z, seen from above: outer ring anticlockwise, holes anywise. */
    void upwardFace(int[] outer, List<int[]> holes) {
        PlanarFace.triangulate(outer, holes, v -> coordinates[3 * v], v -> coordinates[3 * v + 1], this::triangle);
    }

    /** A face in a plane of constant x, seen from behind (from larger x). */
    void rearwardFace(int[] outer) {
        PlanarFace.triangulate(
                outer, List.of(), v -> coordinates[3 * v + 1], v -> coordinates[3 * v + 2], this::triangle);
    }

    Mesh build() {
        return new Mesh(Arrays.copyOf(coordinates, 3 * vertices), Arrays.copyOf(corners, used));
    }

    /** Joins index lists into one ring. */
    static int[] join(List<int[]> parts) {
        List<Integer> all = new ArrayList<>();
        parts.forEach(part -> Arrays.stream(part).forEach(all::add));
        return all.stream().mapToInt(Integer::intValue).toArray();
    }
}
