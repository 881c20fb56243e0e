package org.vanewright.engineering.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a mesh is, by vertex index. A closed, consistently oriented surface has every directed edge once and its reverse
 * once; each of its shells has V − E + F = 2 − 2g, g its genus.
 *
 * @param unmatchedEdges directed edges without their reverse
 * @param repeatedEdges directed edges that occur more than once
 * @param degenerateTriangles triangles with a repeated vertex or next to no area
 * @param coincidentVertices vertices at exactly the place of another
 * @param shellEulerCharacteristics V − E + F of each connected part
 * @param signedVolumeMm3 by the divergence theorem; positive where triangles run anticlockwise seen from outside
 */
public record MeshCheck(
        int unmatchedEdges,
        int repeatedEdges,
        int degenerateTriangles,
        int coincidentVertices,
        List<Integer> shellEulerCharacteristics,
        double signedVolumeMm3) {
    private static final double LEAST_DOUBLE_AREA_MM2 = 1e-10;

    public MeshCheck {
        shellEulerCharacteristics = List.copyOf(shellEulerCharacteristics);
    }

    public static MeshCheck of(Mesh mesh) {
        Map<Long, Integer> directed = new HashMap<>();
        int degenerate = 0;
        for (int t = 0; t < mesh.triangleCount(); t++) {
            for (int k = 0; k < 3; k++) {
                directed.merge(edge(mesh.corner(t, k), mesh.corner(t, (k + 1) % 3)), 1, Integer::sum);
            }
            degenerate += isDegenerate(mesh, t) ? 1 : 0;
        }
        int unmatched = 0;
        int repeated = 0;
        for (Map.Entry<Long, Integer> e : directed.entrySet()) {
            int from = (int) (e.getKey() >> 32);
            int to = (int) (long) e.getKey();
            unmatched += directed.containsKey(edge(to, from)) ? 0 : 1;
            repeated += e.getValue() > 1 ? 1 : 0;
        }
        return new MeshCheck(
                unmatched, repeated, degenerate, coincident(mesh), shells(mesh), MassProperties.signedVolume(mesh));
    }

    /** Closed, consistently oriented outward, every shell a sphere topologically, nothing degenerate. */
    public boolean isSound() {
        return unmatchedEdges == 0
                && repeatedEdges == 0
                && degenerateTriangles == 0
                && coincidentVertices == 0
                && !shellEulerCharacteristics.isEmpty()
                && shellEulerCharacteristics.stream().allMatch(x -> x == 2)
                && signedVolumeMm3 > 0;
    }

    private static long edge(int from, int to) {
        return ((long) from << 32) | to;
    }

    private static boolean isDegenerate(Mesh mesh, int t) {
        double[] n = mesh.doubleAreaVector(t);
        return Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]) < LEAST_DOUBLE_AREA_MM2;
    }

    private static int coincident(Mesh mesh) {
        Set<List<Double>> places = new HashSet<>();
        int coincident = 0;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            coincident += places.add(List.of(mesh.x(v), mesh.y(v), mesh.z(v))) ? 0 : 1;
        }
        return coincident;
    }

    private static List<Integer> shells(Mesh mesh) {
        int[] parent = new int[mesh.vertexCount()];
        for (int v = 0; v < parent.length; v++) {
            parent[v] = v;
        }
        Set<Long> edges = new HashSet<>();
        for (int t = 0; t < mesh.triangleCount(); t++) {
            for (int k = 0; k < 3; k++) {
                int a = mesh.corner(t, k);
                int b = mesh.corner(t, (k + 1) % 3);
                edges.add(edge(Math.min(a, b), Math.max(a, b)));
                parent[root(parent, a)] = root(parent, b);
            }
        }
        Map<Integer, Integer> euler = new HashMap<>();
        for (int v = 0; v < parent.length; v++) {
            euler.merge(root(parent, v), 1, Integer::sum);
        }
        edges.forEach(e -> euler.merge(root(parent, (int) (e >> 32)), -1, Integer::sum));
        for (int t = 0; t < mesh.triangleCount(); t++) {
            euler.merge(root(parent, mesh.corner(t, 0)), 1, Integer::sum);
        }
        return new ArrayList<>(euler.values());
    }

    private static int root(int[] parent, int v) {
        int r = v;
        while (parent[r] != r) {
            parent[r] = parent[parent[r]];
            r = parent[r];
        }
        return r;
    }
}
