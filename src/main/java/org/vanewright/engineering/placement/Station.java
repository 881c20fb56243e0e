package org.vanewright.engineering.placement;

import org.vanewright.engineering.section.SurfaceSide;

/**
 * Where one device sits.
 *
 * @param number counts from the root outward over all rows of one wing
 * @param wing left or right
 * @param row index of the row in the layout
 * @param side of the surface
 * @param panel index of the panel it sits on
 * @param stationMm span station of the base centre
 * @param chordMm local chord
 * @param xOverC base centre as fraction of the local chord
 * @param arcMm base centre along the skin from the leading edge, in the chordwise direction
 * @param angleDeg to the local chordwise direction, toe-in positive
 * @param hand which way it points
 * @param skinRadiusMm radius of the skin along the chord at the base centre; negative where hollow, infinite where flat
 * @param moved whether it had to give way to a keep-out, a joint or an end
 */
public record Station(
        int number,
        Wing wing,
        int row,
        SurfaceSide side,
        int panel,
        double stationMm,
        double chordMm,
        double xOverC,
        double arcMm,
        double angleDeg,
        Hand hand,
        double skinRadiusMm,
        boolean moved) {

    Station on(Wing newWing, int newNumber, double newAngleDeg) {
        return new Station(
                newNumber,
                newWing,
                row,
                side,
                panel,
                stationMm,
                chordMm,
                xOverC,
                arcMm,
                newAngleDeg,
                Hand.of(newAngleDeg),
                skinRadiusMm,
                moved);
    }
}
