package org.vanewright.engineering.wing;

import java.util.List;
import org.vanewright.engineering.geometry.Point2;

/**
 * The scale of a plan drawing: a surface seen from above, nose up, fitted to a sheet of fixed width, so that lettering
 * keeps its size whatever the span.
 *
 * @param mmPerMm sheet length over true length
 * @param mirrored whether the left side is drawn too
 */
public record PlanSheet(double mmPerMm, boolean mirrored) {
    /** Width of the drawn span on the sheet. */
    public static final double WIDTH_MM = 180;

    private static final double DEPTH_MM = 90;

    /** Fits the surface to {@link #WIDTH_MM}, and a stubby one to half of that from front to rear. */
    public static PlanSheet fitting(List<WingPanel> panels, boolean mirrored) {
        double tip = panels.get(panels.size() - 1).outerStationMm();
        double drawn = mirrored ? 2 * tip : tip - panels.get(0).innerStationMm();
        double front = panels.stream()
                .mapToDouble(p -> Math.min(p.innerLeadingEdgeMm(), p.outerLeadingEdgeMm()))
                .min()
                .orElse(0);
        double rear = panels.stream()
                .mapToDouble(p ->
                        Math.max(p.innerLeadingEdgeMm() + p.innerChordMm(), p.outerLeadingEdgeMm() + p.outerChordMm()))
                .max()
                .orElse(0);
        return new PlanSheet(Math.min(WIDTH_MM / drawn, DEPTH_MM / (rear - front)), mirrored);
    }

    /** A point of the right side; {@code rearwardMm} counts from the surface's datum. */
    public Point2 right(double stationMm, double rearwardMm) {
        return new Point2(stationMm * mmPerMm, -rearwardMm * mmPerMm);
    }

    /** The same point of the left side. */
    public Point2 left(double stationMm, double rearwardMm) {
        return new Point2(-stationMm * mmPerMm, -rearwardMm * mmPerMm);
    }

    /** A point at a fraction of the local chord. */
    public Point2 at(WingPanel panel, double stationMm, double chordFraction, boolean left) {
        double rearward = panel.leadingEdgeMm(stationMm) + chordFraction * panel.chordMm(stationMm);
        return left ? left(stationMm, rearward) : right(stationMm, rearward);
    }

    /** The panel that holds a station; the outer one at a joint. */
    public static WingPanel panelAt(List<WingPanel> panels, double stationMm) {
        WingPanel found = panels.get(0);
        for (WingPanel panel : panels) {
            if (stationMm >= panel.innerStationMm()) {
                found = panel;
            }
        }
        return found;
    }

    /** For a drawing that shows this sheet: its scale as people write it, such as {@code 1 : 55}. */
    public String scale() {
        return "1 : " + Math.round(1 / mmPerMm);
    }
}
