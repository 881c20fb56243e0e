package org.vanewright.engineering.placement;

import java.util.List;

/**
 * What is repeated along a row: one device, or a pair.
 *
 * @param members devices of the unit from the root outward
 * @param halfSpanMm from the unit's centre to the outermost edge of a base, along the span
 * @param halfChordMm from a base centre to the front or rear edge of its base
 */
public record Unit(List<Member> members, double halfSpanMm, double halfChordMm) {
    /**
     * One device of a unit.
     *
     * @param offsetMm of the base centre from the unit's centre, outboard positive
     * @param angleDeg toe-in positive
     */
    public record Member(double offsetMm, double angleDeg) {}

    public static Unit of(RowPlan row) {
        DeviceFootprint footprint = row.footprint();
        if (!row.twoDevicesPerUnit()) {
            double angle = footprint.pairOnOneBase() ? 0 : row.angleDeg();
            return new Unit(List.of(new Member(0, angle)), footprint.halfSpanMm(angle), footprint.halfChordMm(angle));
        }
        // Common flow down means leading edges together: the inboard vane toes out, its partner toes in.
        double outboardAngle = row.arrangement() == Arrangement.COMMON_FLOW_DOWN ? row.angleDeg() : -row.angleDeg();
        double half = row.pairGapMm() / 2;
        return new Unit(
                List.of(new Member(-half, -outboardAngle), new Member(half, outboardAngle)),
                half + footprint.halfSpanMm(row.angleDeg()),
                footprint.halfChordMm(row.angleDeg()));
    }
}
