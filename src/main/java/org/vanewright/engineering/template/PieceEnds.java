package org.vanewright.engineering.template;

import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;

/** Says along both ends of a piece at which span station that end lies: that is how it is registered along the span. */
final class PieceEnds {
    private static final double HEIGHT_MM = 2.2;
    private static final double INSET_MM = 2;

    private PieceEnds() {}

    static List<Shape> shapes(SheetFrame frame, PieceExtent extent) {
        return List.of(
                end(frame, extent, extent.fromMm(), extent.toMm(), "inner"),
                end(frame, extent, extent.toMm(), extent.fromMm(), "outer"));
    }

    private static Shape end(SheetFrame frame, PieceExtent extent, double stationMm, double towardsMm, String name) {
        double front = extent.bandBehind() ? extent.frontArcMm(stationMm) : extent.bandEdgeArcMm(stationMm);
        double rear = extent.bandBehind() ? extent.bandEdgeArcMm(stationMm) : extent.rearArcMm(stationMm);
        Point2 low = frame.atArc(stationMm, rear);
        Point2 high = frame.atArc(stationMm, front);
        Point2 up = high.minus(low).times(1 / high.distanceTo(low));
        Point2 inward = frame.atArc(towardsMm, rear).minus(low);
        Point2 side = inward.times(1 / inward.norm());
        // Reading upwards, letters stand to the left of their base line.
        boolean inwardRight = up.cross(side) < 0;
        double away = INSET_MM + (inwardRight ? HEIGHT_MM : 0);
        String text = String.format(Locale.ROOT, "%s end: span station %s mm", name, PieceMarks.stationText(stationMm));
        double room = high.distanceTo(low) - 2 * INSET_MM;
        double height = Math.max(1.2, Math.min(HEIGHT_MM, room / (0.8 * text.length())));
        return new Shape.Text(
                Layer.TEXT,
                text,
                low.plus(side.times(away)).plus(up.times(INSET_MM)),
                height,
                Math.toDegrees(Math.atan2(up.y(), up.x())),
                Shape.Align.START);
    }
}
