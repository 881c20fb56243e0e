package org.vanewright.engineering.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.Similarity;
import org.vanewright.engineering.geometry.Point2;

/** The whole drawing in miniature with the grid of sheets; rows lettered at the left, columns numbered above. */
final class TileMap {
    private static final double LABEL_MM = 2.2;
    private static final double LABEL_ROOM_MM = 5;
    /** Points closer than this on the map are dropped; the eye would not tell them apart. */
    private static final double DETAIL_MM = 0.25;

    private final TilePlan plan;
    private final Similarity place;
    private final List<Shape> shapes = new ArrayList<>();

    private TileMap(TilePlan plan, Similarity place) {
        this.plan = plan;
        this.place = place;
    }

    /** Height on paper of the map when it is {@code widthMm} wide and at most {@code maxHeightMm} high. */
    static double heightMm(TilePlan plan, double widthMm, double maxHeightMm) {
        return scale(plan, widthMm, maxHeightMm) * plan.grid().heightMm() + LABEL_ROOM_MM;
    }

    /** The map with its upper left corner at {@code corner}. */
    static List<Shape> shapes(TilePlan plan, Drawing drawing, Point2 corner, double widthMm, double maxHeightMm) {
        double scale = scale(plan, widthMm, maxHeightMm);
        Bounds grid = plan.grid();
        Point2 shift = new Point2(
                corner.x() + LABEL_ROOM_MM - scale * grid.minXMm(), corner.y() - LABEL_ROOM_MM - scale * grid.maxYMm());
        TileMap map = new TileMap(plan, new Similarity(scale, 0, shift));
        map.cells();
        drawing.shapes().forEach(s -> map.miniature(s).ifPresent(map.shapes::add));
        map.labels();
        return map.shapes;
    }

    private static double scale(TilePlan plan, double widthMm, double maxHeightMm) {
        Bounds grid = plan.grid();
        return Math.min((widthMm - LABEL_ROOM_MM) / grid.widthMm(), (maxHeightMm - LABEL_ROOM_MM) / grid.heightMm());
    }

    private void cells() {
        for (Tile tile : plan.tiles()) {
            List<Point2> corners = tile.core(plan.overlapMm()).corners();
            shapes.add(place.apply(Shape.outline(Layer.MARK, Pen.FINE, Fill.TINT, corners)));
        }
    }

    private Optional<Shape> miniature(Shape shape) {
        if (shape instanceof Shape.Polyline line) {
            List<Point2> points = thinned(line.points());
            Pen pen = line.layer() == Layer.CUT
                            && Bounds.of(line).widthMm() > plan.sheet().widthMm()
                    ? Pen.THIN
                    : Pen.FINE;
            return Optional.of(new Shape.Polyline(Layer.MARK, pen, Fill.NONE, points, line.closed()));
        }
        if (shape instanceof Shape.Circle circle && circle.radiusMm() * place.scale() > DETAIL_MM) {
            return Optional.of(
                    place.apply(new Shape.Circle(Layer.MARK, Pen.FINE, Fill.NONE, circle.centre(), circle.radiusMm())));
        }
        return Optional.empty();
    }

    private List<Point2> thinned(List<Point2> points) {
        List<Point2> kept = new ArrayList<>();
        Point2 last = place.apply(points.get(0));
        kept.add(last);
        for (int i = 1; i < points.size(); i++) {
            Point2 next = place.apply(points.get(i));
            if (i == points.size() - 1 || next.distanceTo(last) >= DETAIL_MM) {
                kept.add(next);
                last = next;
            }
        }
        return kept;
    }

    private void labels() {
        Bounds grid = plan.grid();
        int everyColumn = labelEvery(plan.columnStepMm());
        for (int column = 0; column < plan.columns(); column += everyColumn) {
            double x = grid.minXMm() + (column + 0.5) * plan.columnStepMm() + plan.overlapMm() / 2;
            Point2 at = place.apply(new Point2(x, grid.maxYMm())).plus(new Point2(0, 1.6));
            shapes.add(new Shape.Text(Layer.TEXT, Integer.toString(column + 1), at, LABEL_MM, 0, Shape.Align.MIDDLE));
        }
        int everyRow = labelEvery(plan.rowStepMm());
        for (int row = 0; row < plan.rows(); row += everyRow) {
            double y = grid.maxYMm() - (row + 0.5) * plan.rowStepMm() - plan.overlapMm() / 2;
            Point2 at = place.apply(new Point2(grid.minXMm(), y)).minus(new Point2(2, LABEL_MM / 2));
            shapes.add(new Shape.Text(Layer.TEXT, Tiler.rowName(row), at, LABEL_MM, 0, Shape.Align.END));
        }
    }

    private int labelEvery(double stepMm) {
        return stepMm * place.scale() >= 2.2 * LABEL_MM ? 1 : 5;
    }
}
