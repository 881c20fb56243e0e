package org.vanewright.engineering.tape;

import java.util.List;
import org.vanewright.engineering.geometry.Point2;

/**
 * A kind of piece the way it lies on the roll, its lower left corner at the origin.
 *
 * @param kind index
 * @param turned whether by 90°
 * @param alongMm size along the roll
 * @param acrossMm size across it
 * @param outline there
 */
record KindShape(int kind, boolean turned, double alongMm, double acrossMm, List<Point2> outline) {
    static KindShape of(int kind, TapePiece piece, boolean turned) {
        List<Point2> points = piece.outline().stream()
                .map(p -> turned ? new Point2(-p.y(), p.x()) : p)
                .toList();
        double minX = points.stream().mapToDouble(Point2::x).min().orElseThrow();
        double minY = points.stream().mapToDouble(Point2::y).min().orElseThrow();
        double maxX = points.stream().mapToDouble(Point2::x).max().orElseThrow();
        double maxY = points.stream().mapToDouble(Point2::y).max().orElseThrow();
        Point2 corner = new Point2(minX, minY);
        return new KindShape(
                kind,
                turned,
                maxX - minX,
                maxY - minY,
                points.stream().map(p -> p.minus(corner)).toList());
    }

    boolean fits(double rollWidthMm) {
        return acrossMm <= rollWidthMm;
    }
}
