package org.vanewright.study;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.flow.SideFlow;
import org.vanewright.engineering.solid.VaneSide;
import org.vanewright.engineering.vane.DragBand;
import org.vanewright.engineering.vane.GuidanceCheck;
import org.vanewright.engineering.vane.Recommendation;
import org.vanewright.engineering.vane.SideLoad;
import org.vanewright.engineering.vane.VaneProportions;
import org.vanewright.engineering.vane.WendtCirculation;

/** Looks at rows on one wing at one flight condition, in flow that was computed before. */
final class RowStudies {
    private final FlightState state;
    private final @Nullable Double vneKt;
    private final List<Recommendation> recommendations;

    RowStudies(FlightState state, @Nullable Double vneKt, List<Recommendation> recommendations) {
        this.state = state;
        this.vneKt = vneKt;
        this.recommendations = recommendations;
    }

    RowStudy of(RowTrial row, StationFlow here) {
        SideFlow side = here.side(row.side());
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
                here.latestSeparationX(row.side()),
                proportions,
                circulation,
                loadAtVne(row, layer),
                drag(row, layer, edgeMps),
                GuidanceCheck.of(recommendations, proportions, row.pairs()),
                warnings(here, circulation, layer));
    }

    /** The ratios alone, for the many rows that are only compared. */
    VaneProportions proportions(RowTrial row, StationFlow here) {
        SideFlow side = here.side(row.side());
        LayerHere layer = LayerHere.of(side, row.chordFraction(), here.chordMm());
        return proportions(row, here, side, layer, layer.speedRatio() * state.trueAirspeedMps());
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
        List<String> warnings = new ArrayList<>(StationFlows.warnings(here));
        if (layer.thicknessMm() == null) {
            warnings.add("The device stands behind separation, where the method says nothing of the layer.");
        }
        if (circulation != null) {
            warnings.addAll(circulation.warnings());
        }
        warnings.add("The device itself changes nothing in this flow.");
        return warnings;
    }
}
