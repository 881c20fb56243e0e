package org.vanewright.engineering.drawing.sheet;

import java.util.List;
import java.util.Optional;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;

/** Finds white space among shapes, on a grid of small cells. */
final class FreeArea {
    private static final double CELL_MM = 2;
    private static final double CLEARANCE_MM = 6;

    private final Bounds area;
    private final int columns;
    private final int rows;
    /** Ink by cell, then summed over all cells to the left and below. */
    private final int[][] ink;

    FreeArea(Bounds area, List<Shape> shapes) {
        this.area = area;
        columns = (int) (area.widthMm() / CELL_MM);
        rows = (int) (area.heightMm() / CELL_MM);
        ink = new int[rows + 1][columns + 1];
        shapes.forEach(this::mark);
        for (int row = 1; row <= rows; row++) {
            for (int column = 1; column <= columns; column++) {
                ink[row][column] += ink[row - 1][column] + ink[row][column - 1] - ink[row - 1][column - 1];
            }
        }
    }

    /** Lower left corner of a free rectangle, the lowest there is, clear of every line and of {@code taken}. */
    Optional<Point2> find(double widthMm, double heightMm, Optional<Bounds> taken) {
        int wide = (int) Math.ceil((widthMm + 2 * CLEARANCE_MM) / CELL_MM);
        int high = (int) Math.ceil((heightMm + 2 * CLEARANCE_MM) / CELL_MM);
        for (int row = 0; row + high <= rows; row++) {
            for (int column = 0; column + wide <= columns; column++) {
                Point2 corner = new Point2(
                        area.minXMm() + column * CELL_MM + CLEARANCE_MM, area.minYMm() + row * CELL_MM + CLEARANCE_MM);
                if (sum(row, column, row + high, column + wide) == 0 && clear(corner, widthMm, heightMm, taken)) {
                    return Optional.of(corner);
                }
            }
        }
        return Optional.empty();
    }

    private static boolean clear(Point2 corner, double widthMm, double heightMm, Optional<Bounds> taken) {
        Bounds wanted = new Bounds(corner.x(), corner.y(), corner.x() + widthMm, corner.y() + heightMm);
        return taken.map(t -> !t.touches(wanted.grown(CLEARANCE_MM))).orElse(true);
    }

    private int sum(int fromRow, int fromColumn, int toRow, int toColumn) {
        return ink[toRow][toColumn] - ink[fromRow][toColumn] - ink[toRow][fromColumn] + ink[fromRow][fromColumn];
    }

    private void mark(Shape shape) {
        if (shape instanceof Shape.Polyline line && (line.fill() == Fill.NONE || line.fill() == Fill.TINT)) {
            List<Point2> points = line.points();
            for (int i = 1; i < points.size(); i++) {
                markSegment(points.get(i - 1), points.get(i));
            }
            if (line.closed()) {
                markSegment(points.get(points.size() - 1), points.get(0));
            }
        } else {
            markAll(Bounds.of(shape));
        }
    }

    private void markSegment(Point2 from, Point2 to) {
        double[] inside = Touch.inside(from, to, area);
        double length = (inside[1] - inside[0]) * from.distanceTo(to);
        int steps = (int) Math.ceil(length / (CELL_MM / 2));
        for (int i = 0; i <= steps; i++) {
            double t = inside[0] + (inside[1] - inside[0]) * i / Math.max(1, steps);
            Point2 p = from.plus(to.minus(from).times(t));
            markAll(new Bounds(p.x(), p.y(), p.x(), p.y()));
        }
    }

    private void markAll(Bounds box) {
        int left = Math.max(0, cell(box.minXMm() - area.minXMm()));
        int right = Math.min(columns - 1, cell(box.maxXMm() - area.minXMm()));
        int bottom = Math.max(0, cell(box.minYMm() - area.minYMm()));
        int top = Math.min(rows - 1, cell(box.maxYMm() - area.minYMm()));
        for (int row = bottom; row <= top; row++) {
            for (int column = left; column <= right; column++) {
                ink[row + 1][column + 1] = 1;
            }
        }
    }

    private static int cell(double distanceMm) {
        return (int) Math.floor(distanceMm / CELL_MM);
    }
}
