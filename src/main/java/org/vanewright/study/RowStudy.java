package org.vanewright.study;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.flow.FlowResult;
import org.vanewright.engineering.flow.Polar;
import org.vanewright.engineering.vane.DragBand;
import org.vanewright.engineering.vane.GuidanceCheck;
import org.vanewright.engineering.vane.SideLoad;
import org.vanewright.engineering.vane.VaneProportions;
import org.vanewright.engineering.vane.WendtCirculation;

/**
 * One row at one flight condition.
 *
 * @param row what was looked at
 * @param sectionName of the section there
 * @param chordMm local chord
 * @param reynolds of the chord
 * @param localLift lift coefficient of the section there that level flight asks for
 * @param flow over that section: at that lift, or at the largest that the method claims
 * @param beyondClaim whether level flight asks for more lift than the method claims
 * @param polar over angles of attack at this Reynolds number
 * @param layer at the device
 * @param separationX on the row's side at this condition; null where the layer stays attached
 * @param latestSeparationX on the row's side at the largest lift that is claimed; null where it stays attached
 * @param proportions in which recommendations speak
 * @param circulation behind one vane; null behind separation
 * @param loadAtVne on one vane at never-exceed speed, at its angle to the section; null where the airframe states none
 * @param drag of all vanes of the row
 * @param guidance the row beside each recommendation for such rows
 * @param warnings where the method stops being valid
 */
public record RowStudy(
        RowTrial row,
        String sectionName,
        double chordMm,
        double reynolds,
        double localLift,
        FlowResult flow,
        boolean beyondClaim,
        Polar polar,
        LayerHere layer,
        @Nullable Double separationX,
        @Nullable Double latestSeparationX,
        VaneProportions proportions,
        @Nullable WendtCirculation circulation,
        @Nullable SideLoad loadAtVne,
        DragBand drag,
        List<GuidanceCheck> guidance,
        List<String> warnings) {
    public RowStudy {
        guidance = List.copyOf(guidance);
        warnings = List.copyOf(warnings);
    }

    /** The section there, whatever stands on it. */
    public StationFlow here() {
        return new StationFlow(row.stationMm(), chordMm, reynolds, localLift, flow, beyondClaim, polar, sectionName);
    }
}
