package org.vanewright.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.vanewright.engineering.flow.FlowCondition;
import org.vanewright.engineering.flow.FlowResult;
import org.vanewright.engineering.flow.Polar;
import org.vanewright.engineering.flow.PolarPoint;
import org.vanewright.engineering.flow.SectionFlow;

/** Computes the flow at span stations of a wing. */
final class StationFlows {
    private static final double FIRST_ANGLE_DEG = -4;
    private static final double LAST_ANGLE_DEG = 18;
    private static final int ANGLES = 23;

    private StationFlows() {}

    static StationFlow at(double stationMm, WingSections sections, WingLift wing, FlightState state) {
        double chord = sections.chordMm(stationMm);
        double reynolds = state.chordReynolds(chord);
        FlowCondition condition = FlowCondition.free(reynolds);
        SectionFlow section = sections.at(stationMm).flow();
        Polar polar = Polar.sweep(section, condition, FIRST_ANGLE_DEG, LAST_ANGLE_DEG, ANGLES);
        double lift = wing.at(stationMm);
        Optional<PolarPoint> largest = polar.largestLift();
        boolean beyond = largest.isPresent() && lift > largest.get().liftCoefficient();
        FlowResult flow = beyond
                ? section.at(Math.toRadians(largest.get().angleOfAttackDeg()), condition)
                : section.atLift(lift, condition);
        String name = sections.at(stationMm).section().designation();
        return new StationFlow(stationMm, chord, reynolds, lift, flow, beyond, polar, name);
    }

    /** Where the method stops being valid there. */
    static List<String> warnings(StationFlow here) {
        List<String> warnings = new ArrayList<>();
        if (here.beyondClaim()) {
            warnings.add(String.format(
                    Locale.ROOT,
                    "Level flight asks this section for a lift coefficient of %.2f, more than the method claims; the flow"
                            + " shown is at the largest that it claims, %.2f at %.1f°.",
                    here.localLift(),
                    here.flow().liftCoefficient(),
                    here.flow().angleOfAttackDeg()));
        }
        warnings.addAll(here.flow().validity());
        warnings.add("One section at one span station in still air: no slipstream, fuselage, strut or sweep is in it.");
        return warnings;
    }
}
