package org.vanewright.engineering.view;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.solid.Mesh;

/** What hides what in a projected mesh. */
final class Occlusion {
    /** A surface this little nearer than a line, mm, is the surface the line lies on. */
    private static final double SLACK_MM = 0.02;

    private final STRtree index = new STRtree();

    Occlusion(Mesh mesh, Projection projection) {
        for (int t = 0; t < mesh.triangleCount(); t++) {
            if (projection.faces(t)) {
                Triangle triangle = Triangle.of(mesh, projection, t);
                if (Math.abs(triangle.doubleArea()) > 1e-12) {
                    index.insert(triangle.box(), triangle);
                }
            }
        }
        index.build();
    }

    /** Whether something stands between the viewer and a place at a depth. */
    boolean hides(Point2 place, double depth) {
        List<Triangle> above = new ArrayList<>();
        index.query(new Envelope(place.x(), place.x(), place.y(), place.y()), item -> above.add((Triangle) item));
        return above.stream().anyMatch(t -> t.hides(place, depth + SLACK_MM));
    }

    private record Triangle(Point2 a, Point2 b, Point2 c, double depthA, double depthB, double depthC) {
        static Triangle of(Mesh mesh, Projection projection, int t) {
            int a = mesh.corner(t, 0);
            int b = mesh.corner(t, 1);
            int c = mesh.corner(t, 2);
            return new Triangle(
                    projection.at(a),
                    projection.at(b),
                    projection.at(c),
                    projection.depth(a),
                    projection.depth(b),
                    projection.depth(c));
        }

        Envelope box() {
            Envelope box = new Envelope(a.x(), b.x(), a.y(), b.y());
            box.expandToInclude(c.x(), c.y());
            return box;
        }

        double doubleArea() {
            return side(a, b, c);
        }

        /** Barycentric coordinates inside by a hair, so that a line along the triangle's own edge stays seen. */
        boolean hides(Point2 p, double depth) {
            double whole = doubleArea();
            double u = side(b, c, p) / whole;
            double v = side(c, a, p) / whole;
            double w = 1 - u - v;
            return u >= 0 && v >= 0 && w >= 0 && u * depthA + v * depthB + w * depthC > depth;
        }

        private static double side(Point2 a, Point2 b, Point2 p) {
            return (b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x());
        }
    }
}
