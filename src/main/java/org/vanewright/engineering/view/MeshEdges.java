package org.vanewright.engineering.view;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.vanewright.engineering.solid.Mesh;

/** Edges that a picture shows: where the surface bends sharply, and where it turns away from the viewer. */
final class MeshEdges {
    /** Facets of one curved face meet at less than this. */
    private static final double SHARP_COSINE = Math.cos(Math.toRadians(25));

    private MeshEdges() {}

    /** An edge by its vertices; {@code outline} where only one of its triangles faces the viewer. */
    record Edge(int from, int to, boolean outline) {}

    static List<Edge> shown(Mesh mesh, Projection projection) {
        Map<Long, Integer> firstTriangle = new HashMap<>();
        List<Edge> shown = new ArrayList<>();
        for (int t = 0; t < mesh.triangleCount(); t++) {
            for (int k = 0; k < 3; k++) {
                int a = mesh.corner(t, k);
                int b = mesh.corner(t, (k + 1) % 3);
                Integer other = firstTriangle.putIfAbsent(key(a, b, mesh.vertexCount()), t);
                if (other != null) {
                    boolean here = projection.faces(t);
                    boolean there = projection.faces(other);
                    if (here != there || (here && sharp(mesh, t, other))) {
                        shown.add(new Edge(a, b, here != there));
                    }
                }
            }
        }
        return shown;
    }

    private static long key(int a, int b, int vertices) {
        return (long) Math.min(a, b) * vertices + Math.max(a, b);
    }

    private static boolean sharp(Mesh mesh, int t, int other) {
        double[] m = mesh.doubleAreaVector(t);
        double[] n = mesh.doubleAreaVector(other);
        double dot = m[0] * n[0] + m[1] * n[1] + m[2] * n[2];
        return dot < SHARP_COSINE * length(m) * length(n);
    }

    private static double length(double[] v) {
        return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    }
}
