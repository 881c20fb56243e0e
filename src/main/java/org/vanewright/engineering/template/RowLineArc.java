package org.vanewright.engineering.template;

import org.vanewright.engineering.placement.ChordPosition;

/** The line of base centres, as a distance along the skin from the leading edge. */
final class RowLineArc {
    private RowLineArc() {}

    static double arcMm(SheetFrame frame, ChordPosition position, double stationMm) {
        if (position instanceof ChordPosition.DistanceAlongSkin distance) {
            return Math.min(distance.distanceMm(), frame.wholeArcMm(stationMm));
        }
        return frame.arcMm(stationMm, ((ChordPosition.FractionOfChord) position).xOverC());
    }
}
