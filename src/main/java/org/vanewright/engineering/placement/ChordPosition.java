package org.vanewright.engineering.placement;

import org.vanewright.engineering.unroll.FlatSkin;

/** Where along the chord the base centres of a row lie. */
public sealed interface ChordPosition {
    /**
     * Distance along the skin from the leading edge; may lie beyond the skin's end.
     *
     * @param spanFraction of the panel, 0 to 1
     */
    double arcMm(FlatSkin skin, double spanFraction);

    /** At the same fraction of the local chord everywhere. */
    record FractionOfChord(double xOverC) implements ChordPosition {
        @Override
        public double arcMm(FlatSkin skin, double spanFraction) {
            return skin.station(spanFraction, xOverC).arcMm();
        }
    }

    /** At the same distance along the skin from the leading edge everywhere. */
    record DistanceAlongSkin(double distanceMm) implements ChordPosition {
        @Override
        public double arcMm(FlatSkin skin, double spanFraction) {
            return distanceMm;
        }
    }
}
