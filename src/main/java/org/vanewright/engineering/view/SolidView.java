package org.vanewright.engineering.view;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.solid.Mesh;

/**
 * Draws a solid in isometric view with its hidden edges left out: seen from ahead, from the left and from above, the
 * air coming from the viewer's left. Lengths along the three axes are shortened alike, by √(2/3).
 */
public final class SolidView {
    /** Edges are looked at in pieces of the picture's size over this. */
    private static final double PIECES = 250;

    private static final int MOST_PIECES = 400;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Mesh mesh;
    private final Projection projection;
    private final List<Shape> shapes = new ArrayList<>();

    private SolidView(Mesh mesh) {
        this.mesh = mesh;
        this.projection = new Projection(mesh);
    }

    /**
     * @param mesh closed and oriented outward
     * @param title of the drawing
     * @param description of what it shows, in words
     */
    public static Drawing isometric(Mesh mesh, String title, String description) {
        SolidView view = new SolidView(mesh);
        view.silhouette();
        view.edges();
        return new Drawing(title, description, view.shapes);
    }

    private void silhouette() {
        List<Polygon> facing = new ArrayList<>();
        for (int t = 0; t < mesh.triangleCount(); t++) {
            if (projection.faces(t)) {
                facing.add(FACTORY.createPolygon(new Coordinate[] {
                    coordinate(mesh.corner(t, 0)),
                    coordinate(mesh.corner(t, 1)),
                    coordinate(mesh.corner(t, 2)),
                    coordinate(mesh.corner(t, 0))
                }));
            }
        }
        Geometry union = OverlayNGRobust.union(FACTORY.buildGeometry(facing));
        for (int i = 0; i < union.getNumGeometries(); i++) {
            if (union.getGeometryN(i) instanceof Polygon polygon) {
                LinearRing ring = polygon.getExteriorRing();
                List<Point2> points = new ArrayList<>();
                for (int k = 0; k < ring.getNumPoints() - 1; k++) {
                    points.add(new Point2(ring.getCoordinateN(k).x, ring.getCoordinateN(k).y));
                }
                shapes.add(Shape.outline(Layer.MARK, Pen.THICK, Fill.TINT, points));
            }
        }
    }

    private Coordinate coordinate(int vertex) {
        Point2 p = projection.at(vertex);
        return new Coordinate(p.x(), p.y());
    }

    private void edges() {
        Occlusion occlusion = new Occlusion(mesh, projection);
        double size = 0;
        for (int axis = 0; axis < 3; axis++) {
            size = Math.max(size, mesh.high(axis) - mesh.low(axis));
        }
        for (MeshEdges.Edge edge : MeshEdges.shown(mesh, projection)) {
            edge(edge, occlusion, size / PIECES);
        }
    }

    /** Adds the stretches of an edge that can be seen. */
    private void edge(MeshEdges.Edge edge, Occlusion occlusion, double piece) {
        Point2 from = projection.at(edge.from());
        Point2 to = projection.at(edge.to());
        double near = projection.depth(edge.from());
        double far = projection.depth(edge.to());
        int pieces =
                (int) Math.max(1, Math.min(MOST_PIECES, Math.ceil(to.minus(from).norm() / piece)));
        int start = -1;
        for (int i = 0; i <= pieces; i++) {
            double middle = (i + 0.5) / pieces;
            boolean seen = i < pieces && !occlusion.hides(between(from, to, middle), near + (far - near) * middle);
            if (seen && start < 0) {
                start = i;
            } else if (!seen && start >= 0) {
                Pen pen = edge.outline() ? Pen.THIN : Pen.FINE;
                Point2 first = between(from, to, (double) start / pieces);
                shapes.add(Shape.line(Layer.MARK, pen, first, between(from, to, (double) i / pieces)));
                start = -1;
            }
        }
    }

    private static Point2 between(Point2 a, Point2 b, double t) {
        return a.plus(b.minus(a).times(t));
    }
}
