package org.vanewright.engineering.template;

import org.vanewright.engineering.placement.ChordPosition;
import org.vanewright.engineering.unroll.ChordRange;
import org.vanewright.engineering.unroll.FlatSkin;
import org.vanewright.engineering.unroll.RowLine;
import org.vanewright.engineering.unroll.Unroller;
import org.vanewright.engineering.wing.WingPanel;

/** Develops a twisted or blended panel for one row: true along the row line, over no more skin than the piece covers. */
final class RowDevelopment {
    private RowDevelopment() {}

    /**
     * @param whole the panel developed without regard to the row, for finding chord fractions
     * @param band where the piece has its lettering
     */
    static FlatSkin unroll(WingPanel panel, TemplateRow row, FlatSkin whole, LetteringBand band) {
        return Unroller.unroll(panel, row.plan().side(), rowLine(row.plan().position()), region(row, whole, band));
    }

    private static RowLine rowLine(ChordPosition position) {
        if (position instanceof ChordPosition.DistanceAlongSkin distance) {
            return RowLine.atArcMm(distance.distanceMm(), distance.distanceMm());
        }
        double fraction = ((ChordPosition.FractionOfChord) position).xOverC();
        return RowLine.atChordFraction(fraction, fraction);
    }

    private static ChordRange region(TemplateRow row, FlatSkin whole, LetteringBand band) {
        double reach = row.plan().footprint().reachMm();
        double ahead = reach + (band.behind() ? PieceExtent.MARGIN_MM : band.marginMm() + band.depthMm());
        double behind = reach + (band.behind() ? band.marginMm() + band.depthMm() : PieceExtent.MARGIN_MM);
        double front = Math.min(fraction(row, whole, 0, -ahead), fraction(row, whole, 1, -ahead));
        double rear = Math.max(fraction(row, whole, 0, behind), fraction(row, whole, 1, behind));
        return switch (row.register()) {
            case LEADING_EDGE -> new ChordRange(0, rear);
            case TRAILING_EDGE -> new ChordRange(front, 1);
            case SPAR_LINE ->
                new ChordRange(Math.min(front, row.registerXOverC()), Math.max(rear, row.registerXOverC()));
        };
    }

    private static double fraction(TemplateRow row, FlatSkin whole, double span, double awayMm) {
        double arc = row.plan().position().arcMm(whole, span);
        double clamped = Math.max(0, Math.min(whole.arcLengthMm(span), arc + awayMm));
        return whole.stationByArc(span, clamped).chordFraction();
    }
}
