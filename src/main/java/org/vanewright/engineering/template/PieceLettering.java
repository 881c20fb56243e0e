package org.vanewright.engineering.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.placement.DevicePose;

/** The words and arrows in the band beside the bases, repeated so that every sheet of a tiled print carries them. */
final class PieceLettering {
    private static final double REPEAT_MM = 560;
    private static final double ARROWS_MM = 38;
    private static final double INSET_MM = 6;
    private static final double[] HEIGHTS_MM = {3.6, 2.6, 2.6};
    private static final double[] BASE_LINES_MM = {15, 20.5, 25.5};
    private static final double SMALLEST_MM = 1.6;

    /** Mean advance of a letter over its cap height, for fitting lines only. */
    private static final double ADVANCE = 0.80;

    private final SheetFrame frame;
    private final PieceExtent extent;

    PieceLettering(SheetFrame frame, PieceExtent extent) {
        this.frame = frame;
        this.extent = extent;
    }

    List<Shape> shapes(List<String> lines) {
        double length = extent.toMm() - extent.fromMm();
        int blocks = Math.max(1, (int) Math.floor(length / REPEAT_MM));
        double blockLength = length / blocks;
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < blocks; i++) {
            double from = extent.fromMm() + i * blockLength;
            shapes.addAll(block(from, from + blockLength, lines));
        }
        return shapes;
    }

    private List<Shape> block(double fromMm, double toMm, List<String> lines) {
        boolean outboardRight = frame.outboardSign() > 0;
        double leftStation = outboardRight ? fromMm : toMm;
        double middle = (fromMm + toMm) / 2;
        double xOverC = 0.5;
        DevicePose pose = frame.pose(middle, xOverC, 0);
        double edge = extent.bandBehind() ? extent.bandEdgeArcMm(leftStation) : extent.frontArcMm(leftStation);
        double reading = readingDeg(fromMm, toMm);
        Point2 right = new Point2(1, 0).rotated(Math.toRadians(reading));
        Point2 down = right.rotated(-Math.PI / 2);
        Point2 corner = frame.atArc(leftStation, Math.max(0, edge)).plus(right.times(INSET_MM));
        List<Shape> shapes = new ArrayList<>(arrows(corner, right, down, pose));
        double room = toMm - fromMm - ARROWS_MM - 2 * INSET_MM;
        for (int i = 0; i < lines.size(); i++) {
            double height = fitted(lines.get(i), HEIGHTS_MM[Math.min(i, HEIGHTS_MM.length - 1)], room);
            Point2 at = corner.plus(right.times(ARROWS_MM))
                    .plus(down.times(BASE_LINES_MM[Math.min(i, BASE_LINES_MM.length - 1)] + 5.0 * Math.max(0, i - 2)));
            shapes.add(new Shape.Text(Layer.TEXT, lines.get(i), at, height, reading, Shape.Align.START));
        }
        return shapes;
    }

    private static double fitted(String line, double heightMm, double roomMm) {
        double needed = ADVANCE * heightMm * line.length();
        return needed <= roomMm ? heightMm : Math.max(SMALLEST_MM, heightMm * roomMm / needed);
    }

    /** Direction from the left to the right end of the band. */
    private double readingDeg(double fromMm, double toMm) {
        Point2 a = frame.atArc(fromMm, extent.bandEdgeArcMm(fromMm));
        Point2 b = frame.atArc(toMm, extent.bandEdgeArcMm(toMm));
        Point2 along = frame.outboardSign() > 0 ? b.minus(a) : a.minus(b);
        return Math.toDegrees(Math.atan2(along.y(), along.x()));
    }

    private List<Shape> arrows(Point2 corner, Point2 right, Point2 down, DevicePose pose) {
        Point2 foot = corner.plus(right.times(7)).plus(down.times(24));
        Point2 inboard = pose.outboard().times(-1);
        boolean inboardRight = inboard.dot(right) > 0;
        Point2 tail = corner.plus(right.times(inboardRight ? 16 : 31)).plus(down.times(17));
        List<Shape> shapes = new ArrayList<>();
        shapes.addAll(arrow(foot, down.times(-1), 12));
        shapes.addAll(arrow(tail, inboardRight ? right : right.times(-1), 15));
        double reading = Math.toDegrees(Math.atan2(right.y(), right.x()));
        shapes.add(new Shape.Text(Layer.TEXT, "FORWARD", foot.plus(down.times(4)), 1.8, reading, Shape.Align.MIDDLE));
        shapes.add(new Shape.Text(
                Layer.TEXT,
                "INBOARD",
                corner.plus(right.times(23.5)).plus(down.times(22)),
                1.8,
                reading,
                Shape.Align.MIDDLE));
        return shapes;
    }

    private static List<Shape> arrow(Point2 tail, Point2 direction, double lengthMm) {
        Point2 tip = tail.plus(direction.times(lengthMm));
        Point2 neck = tail.plus(direction.times(lengthMm - 4));
        Point2 side = new Point2(-direction.y(), direction.x()).times(1.4);
        return List.of(
                Shape.line(Layer.MARK, Pen.THIN, tail, neck),
                Shape.outline(Layer.MARK, Pen.FINE, Fill.SOLID, List.of(tip, neck.plus(side), neck.minus(side))));
    }

    /** "span stations 850 to 2,230 mm" without a thousands mark. */
    static String span(double fromMm, double toMm) {
        return String.format(
                Locale.ROOT, "span stations %s to %s mm", PieceMarks.stationText(fromMm), PieceMarks.stationText(toMm));
    }
}
