package org.vanewright.engineering.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.placement.DeviceFootprint;
import org.vanewright.engineering.placement.DevicePose;
import org.vanewright.engineering.placement.Station;

/** What shows each device's place: cut-outs, centre lines, forward ticks, numbers and span stations. */
final class PieceMarks {
    private static final double OVERSHOOT_MM = 5;
    private static final double OVERSHOOT_BEHIND_MM = 3;
    private static final double NUMBER_GAP_MM = 1.2;

    /** The row line stops short of the ends, where the span stations are lettered. */
    private static final double ROW_LINE_INSET_MM = 7;

    private static final double LABEL_INSET_MM = 11;

    private static final double CROSS_MM = 3;
    private static final double NUMBER_HEIGHT_MM = 3.5;
    private static final double STATION_HEIGHT_MM = 2.2;
    private static final double STATION_TICK_MM = 4;
    private static final double STATION_SPACING_MM = 11;
    private static final double ARROW_MM = 3;

    private final SheetFrame frame;
    private final PieceExtent extent;
    private final DeviceFootprint footprint;

    PieceMarks(SheetFrame frame, PieceExtent extent, DeviceFootprint footprint) {
        this.frame = frame;
        this.extent = extent;
        this.footprint = footprint;
    }

    List<Shape> shapes(List<Station> stations) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(rowLine());
        stations.forEach(s -> shapes.addAll(device(frame.pose(s), Integer.toString(s.number()), 0)));
        shapes.addAll(stationScale(stations));
        return shapes;
    }

    /**
     * The cut-out of one base with its centre lines, forward tick and label.
     *
     * @param asideMm how far outboard of the base centre the label stands
     */
    List<Shape> device(DevicePose pose, String label, double asideMm) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Shape.outline(Layer.CUT, Pen.THIN, Fill.NONE, pose.toSheet(footprint.baseOutline())));
        footprint
                .vaneOutlines()
                .forEach(v -> shapes.add(Shape.outline(Layer.MARK, Pen.FINE, Fill.NONE, pose.toSheet(v))));
        double front = frontMm();
        double half = front + OVERSHOOT_MM;
        shapes.add(line(pose, new Point2(-half, 0), new Point2(front + OVERSHOOT_BEHIND_MM, 0)));
        shapes.add(line(pose, new Point2(0, -CROSS_MM), new Point2(0, CROSS_MM)));
        shapes.add(Shape.outline(Layer.MARK, Pen.FINE, Fill.SOLID, forwardTick(pose, half)));
        double away = extent.bandBehind()
                ? extent.reachMm() + PieceExtent.MARGIN_MM / 2 + NUMBER_HEIGHT_MM
                : -(half + ARROW_MM + NUMBER_GAP_MM);
        Point2 at = pose.centre()
                .plus(pose.rearward().times(away))
                .plus(pose.outboard().times(asideMm));
        shapes.add(new Shape.Text(Layer.TEXT, label, at, NUMBER_HEIGHT_MM, readingDeg(pose), Shape.Align.MIDDLE));
        return shapes;
    }

    /** A small arrowhead just ahead of the base, pointing forward along the device's own axis. */
    private static List<Point2> forwardTick(DevicePose pose, double halfMm) {
        return List.of(
                pose.toSheet(new Point2(-halfMm - ARROW_MM, 0)),
                pose.toSheet(new Point2(-halfMm, -ARROW_MM / 3)),
                pose.toSheet(new Point2(-halfMm, ARROW_MM / 3)));
    }

    private double frontMm() {
        return footprint.baseOutline().stream()
                .mapToDouble(p -> Math.abs(p.x()))
                .max()
                .orElseThrow();
    }

    private static Shape line(DevicePose pose, Point2 from, Point2 to) {
        return Shape.line(Layer.MARK, Pen.FINE, pose.toSheet(from), pose.toSheet(to));
    }

    Shape rowLine() {
        List<Point2> points = extent.samples(ROW_LINE_INSET_MM).stream()
                .map(s -> frame.atArc(s, extent.rowArcMm(s)))
                .toList();
        return Shape.open(Layer.MARK, Pen.CENTRE, points);
    }

    /** Ticks at the free edge, at each device's span station, labelled where there is room. */
    private List<Shape> stationScale(List<Station> stations) {
        List<Shape> shapes = new ArrayList<>();
        double lastLabel = Double.NEGATIVE_INFINITY;
        for (Station s : stations) {
            double station = s.stationMm();
            double edge = extent.bandEdgeArcMm(station);
            double inward = extent.bandBehind() ? edge + STATION_TICK_MM : edge - STATION_TICK_MM;
            shapes.add(Shape.line(Layer.MARK, Pen.FINE, frame.atArc(station, edge), frame.atArc(station, inward)));
            if (station - lastLabel >= STATION_SPACING_MM) {
                lastLabel = station;
                shapes.add(stationLabel(s, extent.bandBehind() ? inward + STATION_HEIGHT_MM + 1 : inward - 1));
            }
        }
        return shapes;
    }

    private Shape stationLabel(Station s, double arcMm) {
        DevicePose pose = frame.pose(s.stationMm(), s.xOverC(), 0);
        return new Shape.Text(
                Layer.TEXT,
                stationText(s.stationMm()),
                frame.atArc(clearOfEnds(s.stationMm()), arcMm),
                STATION_HEIGHT_MM,
                readingDeg(pose),
                Shape.Align.MIDDLE);
    }

    /** The ends have lettering of their own. */
    private double clearOfEnds(double stationMm) {
        double from = extent.fromMm() + LABEL_INSET_MM;
        double to = extent.toMm() - LABEL_INSET_MM;
        return from > to ? stationMm : Math.max(from, Math.min(to, stationMm));
    }

    static String stationText(double stationMm) {
        return Math.abs(stationMm - Math.rint(stationMm)) < 0.05
                ? String.format(Locale.ROOT, "%.0f", stationMm)
                : String.format(Locale.ROOT, "%.1f", stationMm);
    }

    /** Angle of the reading direction: along the span, left to right on the page. */
    static double readingDeg(DevicePose pose) {
        Point2 up = pose.rearward().times(-1);
        return Math.toDegrees(Math.atan2(-up.x(), up.y()));
    }
}
