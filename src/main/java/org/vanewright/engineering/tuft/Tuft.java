package org.vanewright.engineering.tuft;

/**
 * A tuft with the cell it stands for.
 *
 * @param left on the left side of the aircraft
 * @param station its place in the grid's stations
 * @param row its place in the grid's chord fractions
 * @param stationMm span station
 * @param chordFraction of the local chord, from the leading edge
 * @param cell around it
 * @param areaMm2 of the cell, in plan
 */
public record Tuft(
        boolean left, int station, int row, double stationMm, double chordFraction, Cell cell, double areaMm2) {
    /**
     * A piece of a surface in plan.
     *
     * @param fromMm inner span station
     * @param toMm outer span station
     * @param fromChord chord fraction of its front
     * @param toChord chord fraction of its rear
     */
    public record Cell(double fromMm, double toMm, double fromChord, double toChord) {}
}
