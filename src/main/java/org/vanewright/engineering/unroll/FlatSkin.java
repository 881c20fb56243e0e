package org.vanewright.engineering.unroll;

import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * One side of a panel's skin, developed into a flat sheet. Immutable.
 *
 * <p><b>Frame of the sheet</b> (mm): origin at the inner leading edge; +y along the flattened leading-edge line, which
 * stays straight, outboard; +x square to it, away from the leading edge over the skin. Both sides of the panel use the
 * same rule, so x is never negative near the leading edge. Turning +x to +y is anticlockwise. Seen from outside the
 * skin (the printed face up) this is the <em>upper side of the right wing</em>, which is also the <em>lower side of the
 * left wing</em>, as {@link #mirroredOutside} says; for the other two the sheet is turned over: change the sign of x or
 * of y, never of lettering.
 *
 * <p>The sheets of the two sides join along the leading edge: the lower one with the sign of x changed continues the
 * upper one without strain, as a flap wrapped under the leading edge does.
 *
 * <p>A ruling, the straight line in the skin through points of one chord fraction, is straight on the sheet and keeps
 * its length, developable or not.
 */
public interface FlatSkin {
    /**
     * @param spanFraction 0 at the inner end of the panel to 1 at the outer
     * @param chordFraction of the local chord, 0 to 1; beyond the skin's own end (a blunt edge's slant) its end
     * @return on the sheet
     * @throws IllegalArgumentException outside those ranges or not finite
     */
    Point2 toFlat(double spanFraction, double chordFraction);

    /**
     * @param spanFraction 0 to 1
     * @param arcMm distance along the local section from the leading edge, 0 to {@link #arcLengthMm}
     * @return on the sheet
     * @throws IllegalArgumentException outside those ranges or not finite
     */
    Point2 toFlatByArc(double spanFraction, double arcMm);

    /** As {@link #toFlat}, with all that is known about the place. */
    SkinStation station(double spanFraction, double chordFraction);

    /** As {@link #toFlatByArc}, with all that is known about the place. */
    SkinStation stationByArc(double spanFraction, double arcMm);

    /** Length of the local section from leading to trailing edge on this side. */
    double arcLengthMm(double spanFraction);

    /** Largest strain over the region asked for; {@code value} 0 where the skin is developable. */
    Strain largestStrain();

    /** Value of {@link #largestStrain}. */
    default double maximumStrain() {
        return largestStrain().value();
    }

    /** True when the sheet is exact. */
    boolean developable();

    /**
     * Whether the sheet has to be turned over to show the skin as a person outside the aircraft sees it.
     *
     * @param leftWing left and right as the pilot sits
     */
    static boolean mirroredOutside(SurfaceSide side, boolean leftWing) {
        return leftWing == (side == SurfaceSide.UPPER);
    }
}
