package org.vanewright.engineering.template;

import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.placement.ChordPosition;
import org.vanewright.engineering.placement.DevicePose;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.unroll.FlatSkin;
import org.vanewright.engineering.unroll.SkinStation;
import org.vanewright.engineering.wing.WingPanel;

/**
 * Turns places on the skin into places on the page. The page is seen from outside the skin with the leading edge up, so
 * the left wing's upper side has outboard to the left and the right wing's to the right; the lower side is the other
 * way round. Left and right are therefore exact mirror images.
 *
 * @param skin the unrolled panel
 * @param panel it belongs to
 * @param outboardSign +1 where outboard is to the right on the page
 */
record SheetFrame(FlatSkin skin, WingPanel panel, int outboardSign) {
    static SheetFrame of(FlatSkin skin, WingPanel panel, SurfaceSide side, Wing wing) {
        boolean right = (wing == Wing.RIGHT) == (side == SurfaceSide.UPPER);
        return new SheetFrame(skin, panel, right ? 1 : -1);
    }

    Point2 atArc(double stationMm, double arcMm) {
        return page(skin.toFlatByArc(panel.spanFraction(stationMm), arcMm));
    }

    /** Position and directions at a place on the skin, on the page. */
    DevicePose pose(double stationMm, double xOverC, double angleDeg) {
        SkinStation at = skin.station(panel.spanFraction(stationMm), xOverC);
        return DevicePose.of(at, angleDeg).mapped(this::page);
    }

    /** By arc: where a cambered nose reaches ahead of the leading edge, no fraction of the chord tells its places apart. */
    DevicePose pose(Station station) {
        SkinStation at = skin.stationByArc(panel.spanFraction(station.stationMm()), station.arcMm());
        return DevicePose.of(at, station.angleDeg()).mapped(this::page);
    }

    /** Distance along the skin from the leading edge to the base centres of a row, within the skin. */
    double rowArcMm(ChordPosition position, double stationMm) {
        return Math.min(position.arcMm(skin, panel.spanFraction(stationMm)), wholeArcMm(stationMm));
    }

    double wholeArcMm(double stationMm) {
        return skin.arcLengthMm(panel.spanFraction(stationMm));
    }

    double arcMm(double stationMm, double xOverC) {
        return skin.station(panel.spanFraction(stationMm), xOverC).arcMm();
    }

    double xOverC(double stationMm, double arcMm) {
        return skin.stationByArc(panel.spanFraction(stationMm), arcMm).chordFraction();
    }

    /** Sheet coordinates (x rearward, y outboard) to the page; serves points and directions alike. */
    private Point2 page(Point2 sheet) {
        return new Point2(outboardSign * sheet.y(), -sheet.x());
    }
}
