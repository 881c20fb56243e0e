package org.vanewright.study;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.flow.FlowResult;
import org.vanewright.engineering.flow.Polar;
import org.vanewright.engineering.flow.PolarPoint;
import org.vanewright.engineering.flow.SideFlow;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * The section at one span station of a wing in level flight, which many rows may be tried on.
 *
 * @param stationMm from the centre line
 * @param chordMm local chord
 * @param reynolds of the chord
 * @param localLift lift coefficient of the section that level flight asks for
 * @param flow at that lift, or at the largest that is claimed
 * @param beyondClaim whether it is the latter
 * @param polar over angles of attack at this Reynolds number
 * @param sectionName of the section there
 */
public record StationFlow(
        double stationMm,
        double chordMm,
        double reynolds,
        double localLift,
        FlowResult flow,
        boolean beyondClaim,
        Polar polar,
        String sectionName) {
    public SideFlow side(SurfaceSide side) {
        return side == SurfaceSide.UPPER ? flow.upper() : flow.lower();
    }

    /** Where the turbulent layer separates in this flight; null where it stays attached. */
    public @Nullable Double separationX(SurfaceSide side) {
        return side(side).separationX();
    }

    /** The same at the largest lift that is claimed. */
    public @Nullable Double latestSeparationX(SurfaceSide side) {
        return polar.largestLift().map(p -> separationX(p, side)).orElse(null);
    }

    /** The same at one angle of the sweep. */
    public static @Nullable Double separationX(PolarPoint point, SurfaceSide side) {
        return side == SurfaceSide.UPPER ? point.upperSeparationX() : point.lowerSeparationX();
    }
}
