package org.vanewright.engineering.template;

import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Lettering;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;

/** Says along both ends of a piece at which span station that end lies: that is how it is registered along the span. */
final class PieceEnds {
    private static final double HEIGHT_MM = 2.2;
    private static final double SMALLEST_MM = 1.2;
    private static final double INSET_MM = 2;

    /** Ahead of a base, for its forward tick. */
    private static final double TICK_MM = 10;

    private final SheetFrame frame;
    private final PieceExtent extent;

    private PieceEnds(SheetFrame frame, PieceExtent extent) {
        this.frame = frame;
        this.extent = extent;
    }

    static List<Shape> shapes(SheetFrame frame, PieceExtent extent) {
        PieceEnds ends = new PieceEnds(frame, extent);
        return List.of(ends.end(extent.fromMm(), "inner", 1), ends.end(extent.toMm(), "outer", -1));
    }

    /** A stretch of the end of a piece, as distances from the leading edge. */
    private record Stretch(double frontMm, double rearMm) {}

    private Shape end(double stationMm, String name, int inwardSign) {
        String text = String.format(Locale.ROOT, "%s end: span station %s mm", name, PieceMarks.stationText(stationMm));
        Stretch stretch = stretch(stationMm, Lettering.widthMm(text, HEIGHT_MM) + 2 * INSET_MM);
        Point2 low = frame.atArc(stationMm, stretch.rearMm());
        Point2 high = frame.atArc(stationMm, stretch.frontMm());
        Point2 up = high.minus(low).times(1 / high.distanceTo(low));
        Point2 square = new Point2(-up.y(), up.x());
        Point2 outboard = frame.pose(stationMm, frame.xOverC(stationMm, stretch.rearMm()), 0)
                .outboard();
        Point2 side = square.times(Math.signum(square.dot(outboard)) * inwardSign);
        double room = high.distanceTo(low) - 2 * INSET_MM;
        double height =
                Math.max(SMALLEST_MM, Math.min(HEIGHT_MM, HEIGHT_MM * room / Lettering.widthMm(text, HEIGHT_MM)));
        // Reading upwards, letters stand to the left of their base line.
        double away = INSET_MM + (up.cross(side) < 0 ? height : 0);
        return new Shape.Text(
                Layer.TEXT,
                text,
                low.plus(side.times(away)).plus(up.times(INSET_MM)),
                height,
                Math.toDegrees(Math.atan2(up.y(), up.x())),
                Shape.Align.START);
    }

    /** Ahead of the bases where there is room; else past them where none is near; else the longer of the two rests. */
    private Stretch stretch(double stationMm, double neededMm) {
        double front = extent.frontArcMm(stationMm);
        double rear = extent.rearArcMm(stationMm);
        double row = extent.rowArcMm(stationMm);
        double ahead = row - extent.reachMm() - TICK_MM;
        double behind = row + extent.reachMm() + INSET_MM;
        if (ahead - front >= neededMm) {
            return new Stretch(front, ahead);
        }
        if (extent.toNearestBaseMm(stationMm) > extent.reachMm() + HEIGHT_MM + 2 * INSET_MM) {
            return new Stretch(front, Math.min(rear, Math.max(behind + neededMm / 2, front + neededMm)));
        }
        if (rear - behind >= neededMm) {
            return new Stretch(behind, behind + neededMm);
        }
        return ahead - front >= rear - behind
                ? new Stretch(front, Math.max(ahead, front + 1))
                : new Stretch(Math.min(behind, rear - 1), rear);
    }
}
