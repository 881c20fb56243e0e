package org.vanewright.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.flow.FlowCondition;
import org.vanewright.engineering.flow.FlowResult;
import org.vanewright.engineering.flow.Polar;
import org.vanewright.engineering.flow.PolarPoint;
import org.vanewright.engineering.flow.SectionFlow;
import org.vanewright.engineering.flow.SideFlow;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.vane.DragBand;
import org.vanewright.engineering.vane.GuidanceCheck;
import org.vanewright.engineering.vane.Recommendation;
import org.vanewright.engineering.vane.SideLoad;
import org.vanewright.engineering.vane.VaneProportions;
import org.vanewright.engineering.vane.WendtCirculation;

/** Looks at rows on one wing at one flight condition. The flow at each span station is computed once. */
final class RowStudies {
    private static final double FIRST_ANGLE_DEG = -4;
    private static final double LAST_ANGLE_DEG = 18;
    private static final int ANGLES = 23;

    private final WingFlow wing;
    private final FlightState state;
    private final @Nullable Double vneKt;
    private final List<Recommendation> recommendations;

    RowStudies(WingFlow wing, FlightState state, @Nullable Double vneKt, List<Recommendation> recommendations) {
        this.wing = wing;
        this.state = state;
        this.vneKt = vneKt;
        this.recommendations = recommendations;
    }

    /**
     * The section at one span station in this flight, which many rows may be tried on.
     *
     * @param flow at the lift of level flight, or at the largest that is claimed
     * @param beyondClaim whether it is the latter
     */
    record StationFlow(
            double stationMm,
            double chordMm,
            double reynolds,
            double localLift,
            FlowResult flow,
            boolean beyondClaim,
            Polar polar,
            String sectionName) {}

    StationFlow at(double stationMm) {
        double chord = wing.chordMm(stationMm);
        double reynolds = wing.reynolds(chord);
        FlowCondition condition = FlowCondition.free(reynolds);
        SectionFlow section = wing.sectionFlow(stationMm);
        Polar polar = Polar.sweep(section, condition, FIRST_ANGLE_DEG, LAST_ANGLE_DEG, ANGLES);
        double lift = wing.liftCoefficientAt(stationMm);
        Optional<PolarPoint> largest = polar.largestLift();
        boolean beyond = largest.isPresent() && lift > largest.get().liftCoefficient();
        FlowResult flow = beyond
                ? section.at(Math.toRadians(largest.get().angleOfAttackDeg()), condition)
                : section.atLift(lift, condition);
        return new StationFlow(
                stationMm,
                chord,
                reynolds,
                lift,
                flow,
                beyond,
                polar,
                wing.section(stationMm).designation());
    }

    RowStudy of(RowTrial row, StationFlow here) {
        SideFlow side = side(here.flow(), row.side());
        LayerHere layer = LayerHere.of(side, row.chordFraction(), here.chordMm());
        double edgeMps = layer.speedRatio() * state.trueAirspeedMps();
        double angle = Math.toRadians(row.angleDeg());
        VaneSide vane = row.vane();
        Double thickness = layer.thicknessMm();
        WendtCirculation circulation = thickness == null
                ? null
                : WendtCirculation.of(vane.heightMm(), vane.lengthMm(), angle, edgeMps, thickness);
        VaneProportions proportions = proportions(row, here, side, layer, edgeMps);
        return new RowStudy(
                row,
                here.sectionName(),
                here.chordMm(),
                here.reynolds(),
                here.localLift(),
                here.flow(),
                here.beyondClaim(),
                here.polar(),
                layer,
                side.separationX(),
                latest(here.polar(), row.side()),
                proportions,
                circulation,
                loadAtVne(row, layer),
                drag(row, layer, edgeMps),
                GuidanceCheck.of(recommendations, proportions, row.pairs()),
                warnings(here, circulation, layer));
    }

    private static SideFlow side(FlowResult flow, SurfaceSide side) {
        return side == SurfaceSide.UPPER ? flow.upper() : flow.lower();
    }

    private static @Nullable Double latest(Polar polar, SurfaceSide side) {
        return polar.largestLift()
                .map(p -> side == SurfaceSide.UPPER ? p.upperSeparationX() : p.lowerSeparationX())
                .orElse(null);
    }

    private VaneProportions proportions(
            RowTrial row, StationFlow here, SideFlow side, LayerHere layer, double edgeMps) {
        double height = row.vane().heightMm();
        Double separation = side.separationX();
        Double distance = separation == null
                ? null
                : Double.valueOf((LayerHere.arcMm(side, separation, here.chordMm()) - layer.arcMm()) / height);
        return new VaneProportions(
                layer.thicknessMm() == null ? null : Double.valueOf(height / layer.thicknessMm()),
                row.vane().lengthMm() / height,
                row.angleDeg(),
                row.pitchMm() / height,
                row.gapMm() == null ? null : Double.valueOf(row.gapMm() / height),
                distance,
                row.chordFraction(),
                edgeMps * height / 1000 / state.air().kinematicViscosityM2S());
    }

    /** With the speed-up over the section of this condition, which is more than that at high speed. */
    private @Nullable SideLoad loadAtVne(RowTrial row, LayerHere layer) {
        if (vneKt == null) {
            return null;
        }
        double speed = vneKt * Airspeeds.METRES_PER_SECOND_PER_KNOT * layer.speedRatio();
        double pressure = StandardAtmosphere.SEA_LEVEL_DENSITY_KG_M3 * speed * speed / 2;
        return load(row, pressure);
    }

    private static SideLoad load(RowTrial row, double pressurePa) {
        VaneSide vane = row.vane();
        return SideLoad.of(
                vane.heightMm(), vane.areaMm2(), vane.centroidMm(), Math.toRadians(row.angleDeg()), pressurePa);
    }

    private DragBand drag(RowTrial row, LayerHere layer, double edgeMps) {
        VaneSide vane = row.vane();
        double reynolds =
                Math.max(1, edgeMps * vane.lengthMm() / 1000 / state.air().kinematicViscosityM2S());
        double ratio = layer.thicknessMm() == null ? 1 : vane.heightMm() / layer.thicknessMm();
        double edgePressure = state.dynamicPressurePa() * layer.speedRatio() * layer.speedRatio();
        return DragBand.of(
                        vane.areaMm2(),
                        reynolds,
                        ratio,
                        load(row, edgePressure),
                        Math.toRadians(row.angleDeg()),
                        layer.speedRatio())
                .times(row.vanes());
    }

    private static List<String> warnings(StationFlow here, @Nullable WendtCirculation circulation, LayerHere layer) {
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
        if (layer.thicknessMm() == null) {
            warnings.add("The device stands behind separation, where the method says nothing of the layer.");
        }
        warnings.addAll(here.flow().validity());
        if (circulation != null) {
            warnings.addAll(circulation.warnings());
        }
        warnings.add(
                "One section at one span station in still air: no slipstream, fuselage, strut or sweep is in it, and"
                        + " the device itself changes nothing in this flow.");
        return warnings;
    }
}
