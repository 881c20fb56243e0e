package org.vanewright.engineering.solid;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.triangulate.polygon.ConstrainedDelaunayTriangulator;

/** Triangles of a plane face with holes, over the vertices that are there and no others. */
public final class PlanarFace {
    private static final GeometryFactory PLANE = new GeometryFactory();

    private PlanarFace() {}

    /** Takes the triangles. */
    public interface Triangles {
        void add(int a, int b, int c);
    }

    /** @param u first plane coordinate of a vertex, {@code v} second; triangles come anticlockwise in (u, v) */
    public static void triangulate(
            int[] outer, List<int[]> holes, IntToDoubleFunction u, IntToDoubleFunction v, Triangles sink) {
        Map<Coordinate, Integer> index = new HashMap<>();
        LinearRing shell = ring(outer, u, v, index);
        LinearRing[] inner = holes.stream().map(h -> ring(h, u, v, index)).toArray(LinearRing[]::new);
        Geometry triangles = ConstrainedDelaunayTriangulator.triangulate(PLANE.createPolygon(shell, inner));
        for (int i = 0; i < triangles.getNumGeometries(); i++) {
            Coordinate[] c = triangles.getGeometryN(i).getCoordinates();
            boolean anticlockwise = Orientation.index(c[0], c[1], c[2]) == Orientation.COUNTERCLOCKWISE;
            sink.add(at(index, c[0]), at(index, c[anticlockwise ? 1 : 2]), at(index, c[anticlockwise ? 2 : 1]));
        }
    }

    private static int at(Map<Coordinate, Integer> index, Coordinate c) {
        Integer vertex = index.get(c);
        if (vertex == null) {
            throw new IllegalStateException("the triangulation made a vertex of its own at " + c);
        }
        return vertex;
    }

    private static LinearRing ring(
            int[] vertices, IntToDoubleFunction u, IntToDoubleFunction v, Map<Coordinate, Integer> index) {
        Coordinate[] ring = new Coordinate[vertices.length + 1];
        for (int i = 0; i < vertices.length; i++) {
            ring[i] = new Coordinate(u.applyAsDouble(vertices[i]), v.applyAsDouble(vertices[i]));
            index.put(ring[i], vertices[i]);
        }
        ring[vertices.length] = ring[0];
        return PLANE.createLinearRing(ring);
    }
}
