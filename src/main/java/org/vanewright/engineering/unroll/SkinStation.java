package org.vanewright.engineering.unroll;

import org.vanewright.engineering.geometry.Point2;

/**
 * One place on the skin, in space and on the flat sheet.
 *
 * @param spanFraction 0 at the inner end of the panel, 1 at the outer
 * @param chordFraction of the local chord
 * @param rearwardMm in the panel, from the inner leading edge, parallel to the inner chord line
 * @param outboardMm in the panel, along the span from the inner end
 * @param upMm in the panel, over the inner chord line
 * @param chordMm local chord
 * @param arcMm distance along the local section from the leading edge
 * @param flat on the sheet, frame as in {@link FlatSkin}
 * @param rearward unit vector on the sheet: image of the local section curve's direction away from the leading edge.
 *     This is the streamwise direction on the skin, from which vane angles are measured
 * @param outboard unit vector on the sheet along the ruling, which is the line of constant chord fraction
 * @param curvaturePerMm of the local section curve (1/mm), positive where the skin is convex outward
 */
public record SkinStation(
        double spanFraction,
        double chordFraction,
        double rearwardMm,
        double outboardMm,
        double upMm,
        double chordMm,
        double arcMm,
        Point2 flat,
        Point2 rearward,
        Point2 outboard,
        double curvaturePerMm) {
    /** Radius of the local section curve; negative where the skin is hollow, infinite where it is straight. */
    public double curvatureRadiusMm() {
        return curvaturePerMm == 0 ? Double.POSITIVE_INFINITY : 1 / curvaturePerMm;
    }
}
