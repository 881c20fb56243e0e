package org.vanewright.engineering.gauge;

import org.vanewright.engineering.placement.WingSkin;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SkinPoint;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.unroll.FlatSkin;
import org.vanewright.engineering.unroll.SkinStation;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;

/**
 * The outline of a wing at one span station, round its leading edge. Of a panel whose ends have one shape it is that shape,
 * scaled; of any other it comes from straight rulings between the ends, directions by central differences.
 */
final class NoseCurve {
    /** So small that the difference is exact to 1e-6 even at a nose of 3 mm radius. */
    private static final double STEP_MM = 0.01;

    private final WingPanel panel;
    private final SurfaceSide side;
    private final FlatSkin row;
    private final FlatSkin other;
    private final double spanFraction;
    private final double chordMm;
    private final double leadingEdgeMm;

    private NoseCurve(WingPanel panel, SurfaceSide side, FlatSkin row, FlatSkin other, double stationMm) {
        this.panel = panel;
        this.side = side;
        this.row = row;
        this.other = other;
        this.spanFraction = Math.min(1, Math.max(0, panel.spanFraction(stationMm)));
        this.chordMm = panel.innerChordMm() + spanFraction * (panel.outerChordMm() - panel.innerChordMm());
        this.leadingEdgeMm =
                panel.innerLeadingEdgeMm() + spanFraction * (panel.outerLeadingEdgeMm() - panel.innerLeadingEdgeMm());
    }

    /** @param stationMm within the panel; beyond its ends the end itself */
    static NoseCurve at(WingShape wing, WingSkin skin, int panel, SurfaceSide side, double stationMm) {
        return new NoseCurve(
                wing.panels().get(panel), side, skin.flat(side, panel), skin.flat(opposite(side), panel), stationMm);
    }

    static SurfaceSide opposite(SurfaceSide side) {
        return side == SurfaceSide.UPPER ? SurfaceSide.LOWER : SurfaceSide.UPPER;
    }

    /** From the leading to the trailing edge on the row's side. */
    double lengthMm() {
        return row.arcLengthMm(spanFraction);
    }

    double otherLengthMm() {
        return other.arcLengthMm(spanFraction);
    }

    /** @param s from minus {@link #otherLengthMm} to {@link #lengthMm}; beyond them the ends themselves */
    NosePoint at(double s) {
        return panel.developable() ? scaled(s) : ruled(s);
    }

    private NosePoint scaled(double s) {
        Section section = panel.innerSection();
        SurfaceSide on = s >= 0 ? side : opposite(side);
        double arc = Math.min(Math.abs(s) / chordMm, section.arcLength(on));
        SkinPoint p = section.atArcLength(on, arc);
        double sign = s >= 0 ? 1 : -1;
        return point(
                leadingEdgeMm + chordMm * p.x(),
                chordMm * p.y(),
                sign * p.tangentX(),
                sign * p.tangentY(),
                p.curvature() / chordMm);
    }

    private NosePoint ruled(double s) {
        SkinStation here = station(s);
        SkinStation after = station(s + STEP_MM);
        SkinStation before = station(s - STEP_MM);
        double dx = after.rearwardMm() - before.rearwardMm();
        double dz = after.upMm() - before.upMm();
        double length = Math.hypot(dx, dz);
        return point(
                panel.innerLeadingEdgeMm() + here.rearwardMm(),
                here.upMm(),
                dx / length,
                dz / length,
                here.curvaturePerMm());
    }

    private SkinStation station(double s) {
        FlatSkin skin = s >= 0 ? row : other;
        return skin.stationByArc(spanFraction, Math.min(Math.abs(s), skin.arcLengthMm(spanFraction)));
    }

    private NosePoint point(double x, double z, double tx, double tz, double curvature) {
        double out = side == SurfaceSide.UPPER ? 1 : -1;
        return new NosePoint(x, z, tx, tz, -out * tz, out * tx, curvature);
    }

    /** How sharply the outline turns at the leading edge itself, radians; all but 0 where the nose is round. */
    double cornerRad() {
        NosePoint before = at(-STEP_MM);
        NosePoint after = at(STEP_MM);
        double turned = Math.abs(Math.atan2(
                before.tangentX() * after.tangentZ() - before.tangentZ() * after.tangentX(),
                before.tangentX() * after.tangentX() + before.tangentZ() * after.tangentZ()));
        return turned;
    }
}
