package org.vanewright.engineering.solid;

import java.util.Optional;

/** Brute-force search for triangles that cross: an edge of one passes through the inside of another. */
final class Crossings {
    private static final double TOUCH = 1e-9;

    private Crossings() {}

    /** The first pair of triangles found, in words. */
    static Optional<String> first(Mesh mesh) {
        for (int s = 0; s < mesh.triangleCount(); s++) {
            for (int t = 0; t < mesh.triangleCount(); t++) {
                if (s != t && boxesMeet(mesh, s, t) && pierces(mesh, s, t)) {
                    return Optional.of("an edge of triangle " + s + " passes through triangle " + t);
                }
            }
        }
        return Optional.empty();
    }

    private static boolean boxesMeet(Mesh mesh, int s, int t) {
        for (int axis = 0; axis < 3; axis++) {
            if (high(mesh, s, axis) < low(mesh, t, axis) || high(mesh, t, axis) < low(mesh, s, axis)) {
                return false;
            }
        }
        return true;
    }

    private static double low(Mesh m, int t, int axis) {
        return Math.min(
                m.coordinate(m.corner(t, 0), axis),
                Math.min(m.coordinate(m.corner(t, 1), axis), m.coordinate(m.corner(t, 2), axis)));
    }

    private static double high(Mesh m, int t, int axis) {
        return Math.max(
                m.coordinate(m.corner(t, 0), axis),
                Math.max(m.coordinate(m.corner(t, 1), axis), m.coordinate(m.corner(t, 2), axis)));
    }

    private static boolean pierces(Mesh mesh, int s, int t) {
        for (int k = 0; k < 3; k++) {
            if (edgePierces(mesh, mesh.corner(s, k), mesh.corner(s, (k + 1) % 3), t)) {
                return true;
            }
        }
        return false;
    }

    /** Signed volumes: the ends lie on different sides of the plane, and the edge passes all three sides alike. */
    private static boolean edgePierces(Mesh m, int p, int q, int t) {
        int a = m.corner(t, 0);
        int b = m.corner(t, 1);
        int c = m.corner(t, 2);
        if (volume(m, a, b, c, p) * volume(m, a, b, c, q) >= -TOUCH * TOUCH) {
            return false;
        }
        double u = volume(m, p, q, a, b);
        double v = volume(m, p, q, b, c);
        double w = volume(m, p, q, c, a);
        return (u > TOUCH && v > TOUCH && w > TOUCH) || (u < -TOUCH && v < -TOUCH && w < -TOUCH);
    }

    private static double volume(Mesh m, int a, int b, int c, int d) {
        double[] u = difference(m, b, a);
        double[] v = difference(m, c, a);
        double[] w = difference(m, d, a);
        return u[0] * (v[1] * w[2] - v[2] * w[1])
                + u[1] * (v[2] * w[0] - v[0] * w[2])
                + u[2] * (v[0] * w[1] - v[1] * w[0]);
    }

    private static double[] difference(Mesh m, int a, int b) {
        return new double[] {m.x(a) - m.x(b), m.y(a) - m.y(b), m.z(a) - m.z(b)};
    }
}
