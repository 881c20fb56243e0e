package org.vanewright.engineering.placement;

import org.vanewright.engineering.section.SurfaceSide;

/**
 * A row as a person asks for it.
 *
 * @param index of the row in its layout, for numbering and error messages
 * @param name of the row
 * @param side of the surface
 * @param fromMm span station of the first unit's centre; a unit is one device, or a pair
 * @param toMm span station that no unit's centre lies beyond
 * @param position along the chord
 * @param arrangement how vanes are turned
 * @param angleDeg between vane and local chordwise direction. Co-rotating rows: toe-in positive (leading edge towards
 *     the centre line). Pairs: its size; the arrangement decides the direction
 * @param pitchMm along the span, between unit centres
 * @param pairGapMm along the span, between the base centres of a pair of single-vane devices; unused otherwise
 * @param wings on which wings
 * @param onConflict what happens where a device can't sit
 * @param footprint of the device
 */
public record RowPlan(
        int index,
        String name,
        SurfaceSide side,
        double fromMm,
        double toMm,
        ChordPosition position,
        Arrangement arrangement,
        double angleDeg,
        double pitchMm,
        double pairGapMm,
        WingChoice wings,
        ConflictPolicy onConflict,
        DeviceFootprint footprint) {

    /**
     * Factor from the toe-in angle on the left wing to the one on this wing. A pair shifted from one wing to the other
     * looks the same as one mirrored; only vanes turned singly can differ.
     */
    public double angleSign(Wing wing) {
        return arrangement.paired() ? 1 : wings.angleSign(wing);
    }

    /** True when each unit is two separate devices. */
    boolean twoDevicesPerUnit() {
        return arrangement.paired() && !footprint.pairOnOneBase();
    }
}
