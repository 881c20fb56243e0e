package org.vanewright.engineering.template;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.placement.Placement;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.wing.PlanSheet;
import org.vanewright.engineering.wing.WingPanel;

/** Adds every device, to scale, to the plan of a surface. */
public final class PlanWithDevices {
    private PlanWithDevices() {}

    /**
     * @param plan drawn on {@link PlanSheet#fitting} of the same panels
     * @param panels of one half
     * @param mirrored whether the left half is drawn too; otherwise only right-hand devices appear
     */
    public static Drawing add(
            Drawing plan, List<WingPanel> panels, boolean mirrored, List<TemplateRow> rows, Placement placement) {
        PlanSheet sheet = PlanSheet.fitting(panels, mirrored);
        List<Shape> shapes = new ArrayList<>(plan.shapes());
        for (TemplateRow row : rows) {
            for (Wing wing : Wing.values()) {
                if (mirrored || wing == Wing.RIGHT) {
                    placement.on(wing, row.plan().index()).forEach(s -> shapes.add(device(sheet, panels, row, s)));
                }
            }
        }
        int count = placement.stations().size();
        return new Drawing(
                plan.title(), plan.description() + " With " + count + " devices, both sides together.", shapes);
    }

    private static Shape device(PlanSheet sheet, List<WingPanel> panels, TemplateRow row, Station s) {
        WingPanel panel = panels.get(s.panel());
        double rearward = panel.leadingEdgeMm(s.stationMm()) + s.xOverC() * s.chordMm();
        double angle = Math.toRadians(s.angleDeg());
        List<Point2> points = row.plan().footprint().baseOutline().stream()
                .map(p -> onPlan(sheet, s, rearward, p, angle))
                .toList();
        return Shape.outline(Layer.MARK, Pen.FINE, Fill.SOLID, points);
    }

    /** Seen from above the base is foreshortened by the slope of the skin; too little to see at this scale. */
    private static Point2 onPlan(PlanSheet sheet, Station s, double rearwardMm, Point2 own, double angleRad) {
        double out = own.x() * Math.sin(angleRad) + own.y() * Math.cos(angleRad);
        double back = own.x() * Math.cos(angleRad) - own.y() * Math.sin(angleRad);
        double station = s.stationMm() + out;
        return s.wing() == Wing.LEFT ? sheet.left(station, rearwardMm + back) : sheet.right(station, rearwardMm + back);
    }
}
