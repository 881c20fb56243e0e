package org.vanewright.engineering.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;

/**
 * Seams and the crosses on them, in mm on the drawing. Both sheets at a seam carry the same crosses: one is cut through
 * them, its halves meet those on the other.
 */
public final class RegistrationMarks {
    private static final List<Double> PLACES = List.of(0.2, 0.8);
    private static final double RING_MM = 1.2;

    private RegistrationMarks() {}

    /** Centres of the crosses at one edge of a tile; none where no sheet joins. */
    public static List<Point2> centres(TilePlan plan, Tile tile, Edge edge) {
        if (!tile.neighbours().containsKey(edge)) {
            return List.of();
        }
        Bounds region = tile.region();
        double half = plan.overlapMm() / 2;
        return PLACES.stream()
                .map(place -> {
                    double x = region.minXMm() + place * region.widthMm();
                    double y = region.minYMm() + place * region.heightMm();
                    return switch (edge) {
                        case LEFT -> new Point2(region.minXMm() + half, y);
                        case RIGHT -> new Point2(region.maxXMm() - half, y);
                        case ABOVE -> new Point2(x, region.maxYMm() - half);
                        case BELOW -> new Point2(x, region.minYMm() + half);
                    };
                })
                .toList();
    }

    /** Seams and crosses of a tile: dashed where it is cut, fine where its neighbour is laid. */
    static List<Shape> shapes(TilePlan plan, Tile tile) {
        List<Shape> shapes = new ArrayList<>();
        for (Edge edge : tile.neighbours().keySet()) {
            shapes.add(seam(plan, tile.region(), edge));
            centres(plan, tile, edge).stream()
                    .flatMap(c -> cross(c, plan.overlapMm() / 2 - 0.5))
                    .forEach(shapes::add);
        }
        return shapes;
    }

    private static Shape seam(TilePlan plan, Bounds region, Edge edge) {
        double half = plan.overlapMm() / 2;
        double x = edge == Edge.LEFT ? region.minXMm() + half : region.maxXMm() - half;
        double y = edge == Edge.BELOW ? region.minYMm() + half : region.maxYMm() - half;
        Point2 from = edge.isUpright() ? new Point2(x, region.minYMm()) : new Point2(region.minXMm(), y);
        Point2 to = edge.isUpright() ? new Point2(x, region.maxYMm()) : new Point2(region.maxXMm(), y);
        return Shape.line(Layer.MARK, edge.isCut() ? Pen.DASHED : Pen.FINE, from, to);
    }

    private static Stream<Shape> cross(Point2 c, double armMm) {
        Point2 across = new Point2(armMm, 0);
        Point2 up = new Point2(0, armMm);
        return Stream.of(
                Shape.line(Layer.MARK, Pen.THIN, c.minus(across), c.plus(across)),
                Shape.line(Layer.MARK, Pen.THIN, c.minus(up), c.plus(up)),
                new Shape.Circle(Layer.MARK, Pen.FINE, Fill.NONE, c, RING_MM));
    }
}
