package org.vanewright.engineering.gauge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.solid.PlanarFace;

/**
 * A plate bent over the skin, as one closed mesh: every cell of its flat outline becomes a piece of the inner and of the
 * outer surface, and a wall stands wherever the level changes. Cells share their corners exactly, so nothing gapes.
 */
final class ShellMesh {
    /** Inner surface. */
    private static final int INSIDE = 0;

    private final Function<Level, double[]> place;
    private final boolean turnedOver;
    private final List<double[]> vertices = new ArrayList<>();
    private final List<int[]> triangles = new ArrayList<>();
    private final Map<Level, Integer> index = new HashMap<>();
    private final Map<Edge, Integer> levels = new HashMap<>();

    /** A corner of the flat outline on one of the surfaces: 0 inside, 1 outside, 2 raised. */
    record Level(Coordinate at, int level) {}

    /** A cell and the level of its outer face, 1 or more. */
    record Cell(Polygon shape, int level) {}

    private record Edge(Coordinate from, Coordinate to) {}

    private ShellMesh(Function<Level, double[]> place, boolean turnedOver) {
        this.place = place;
        this.turnedOver = turnedOver;
    }

    /**
     * @param place x, y, z of a corner
     * @param turnedOver whether the outline seen anticlockwise faces inward in space
     */
    static Mesh of(List<Cell> cells, Function<Level, double[]> place, boolean turnedOver) {
        ShellMesh shell = new ShellMesh(place, turnedOver);
        cells.forEach(shell::surfaces);
        cells.forEach(shell::walls);
        return shell.mesh();
    }

    private void surfaces(Cell cell) {
        List<Coordinate[]> rings = rings(cell.shape());
        List<Coordinate> corners = new ArrayList<>();
        List<int[]> numbered = new ArrayList<>();
        for (Coordinate[] ring : rings) {
            int[] own = new int[ring.length - 1];
            for (int i = 0; i < own.length; i++) {
                own[i] = corners.size();
                corners.add(ring[i]);
                levels.put(new Edge(ring[i], ring[i + 1]), cell.level());
            }
            numbered.add(own);
        }
        PlanarFace.triangulate(
                numbered.get(0),
                numbered.subList(1, numbered.size()),
                i -> corners.get(i).x,
                i -> corners.get(i).y,
                (a, b, c) -> {
                    triangle(
                            vertex(corners.get(a), cell.level()),
                            vertex(corners.get(b), cell.level()),
                            vertex(corners.get(c), cell.level()));
                    triangle(
                            vertex(corners.get(c), INSIDE),
                            vertex(corners.get(b), INSIDE),
                            vertex(corners.get(a), INSIDE));
                });
    }

    private void walls(Cell cell) {
        for (Coordinate[] ring : rings(cell.shape())) {
            for (int i = 0; i + 1 < ring.length; i++) {
                int beyond = levels.getOrDefault(new Edge(ring[i + 1], ring[i]), INSIDE);
                if (beyond < cell.level()) {
                    int a = vertex(ring[i], beyond);
                    int b = vertex(ring[i + 1], beyond);
                    int above = vertex(ring[i + 1], cell.level());
                    triangle(a, b, above);
                    triangle(a, above, vertex(ring[i], cell.level()));
                }
            }
        }
    }

    /** The outer ring anticlockwise, holes clockwise, so that the cell is always to the left. */
    private static List<Coordinate[]> rings(Polygon cell) {
        List<Coordinate[]> rings = new ArrayList<>();
        rings.add(turned(cell.getExteriorRing().getCoordinates(), true));
        for (int i = 0; i < cell.getNumInteriorRing(); i++) {
            rings.add(turned(cell.getInteriorRingN(i).getCoordinates(), false));
        }
        return rings;
    }

    private static Coordinate[] turned(Coordinate[] ring, boolean anticlockwise) {
        Coordinate[] own = ring.clone();
        if (Orientation.isCCW(own) != anticlockwise) {
            for (int i = 0, j = own.length - 1; i < j; i++, j--) {
                Coordinate kept = own[i];
                own[i] = own[j];
                own[j] = kept;
            }
        }
        return own;
    }

    private int vertex(Coordinate at, int level) {
        return index.computeIfAbsent(new Level(at, level), key -> {
            vertices.add(place.apply(key));
            return vertices.size() - 1;
        });
    }

    private void triangle(int a, int b, int c) {
        triangles.add(turnedOver ? new int[] {a, c, b} : new int[] {a, b, c});
    }

    private Mesh mesh() {
        return new Mesh(
                vertices.stream().flatMapToDouble(Arrays::stream).toArray(),
                triangles.stream().flatMapToInt(Arrays::stream).toArray());
    }
}
