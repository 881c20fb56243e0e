package org.vanewright.engineering.template;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Lettering;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;

/** What tests read from the shapes of a piece. */
final class PieceShapes {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private PieceShapes() {}

    /** The outline of the piece, then the cut-out of each base. */
    static List<Polygon> cuts(TemplatePiece piece) {
        return piece.drawing().shapes().stream()
                .filter(s -> s.layer() == Layer.CUT)
                .map(s -> polygon(((Shape.Polyline) s).points()))
                .toList();
    }

    static List<Shape.Text> texts(TemplatePiece piece) {
        return piece.drawing().shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .map(Shape.Text.class::cast)
                .toList();
    }

    static Polygon polygon(List<Point2> points) {
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point2 p = points.get(i % points.size());
            ring[i] = new Coordinate(p.x(), p.y());
        }
        return GEOMETRY.createPolygon(ring);
    }

    /** The rectangle that one line of lettering takes from its base line to the height of its capitals. */
    static Polygon box(Shape.Text text) {
        double width = Lettering.widthMm(text.text(), text.heightMm());
        double start = switch (text.align()) {
            case START -> 0;
            case MIDDLE -> -width / 2;
            case END -> -width;
        };
        List<Point2> corners = new ArrayList<>();
        corners.add(new Point2(start, 0));
        corners.add(new Point2(start + width, 0));
        corners.add(new Point2(start + width, text.heightMm()));
        corners.add(new Point2(start, text.heightMm()));
        double turn = Math.toRadians(text.rotationDeg());
        return polygon(
                corners.stream().map(c -> text.at().plus(c.rotated(turn))).toList());
    }
}
