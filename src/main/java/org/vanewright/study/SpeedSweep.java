package org.vanewright.study;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument.Speeds;
import org.vanewright.engineering.flow.FlowResult;
import org.vanewright.engineering.flow.SideFlow;
import org.vanewright.engineering.section.SurfaceSide;

/** Places at one mass in one air, from the clean stall to cruise. */
final class SpeedSweep {
    private static final int SPEEDS = 8;

    private SpeedSweep() {}

    /** Evenly spaced; empty where the airframe does not state both ends. */
    static List<SpeedPoint> of(KeptFlows.Wing wing, FlightState state, @Nullable Speeds speeds, List<Place> places) {
        Double from = speeds == null ? null : speeds.vs1Kt();
        Double to = speeds == null ? null : speeds.cruiseKt();
        if (from == null || to == null || to <= from) {
            return List.of();
        }
        List<SpeedPoint> points = new ArrayList<>();
        for (int i = 0; i < SPEEDS; i++) {
            FlightState there = state.atSpeed(from + (to - from) * i / (SPEEDS - 1));
            points.add(new SpeedPoint(
                    there.speeds().calibratedAirspeedKt(),
                    wing.lift(there).coefficient(),
                    places.stream().map(place -> at(wing, there, place)).toList()));
        }
        return List.copyOf(points);
    }

    private static SpeedPoint.RowPoint at(KeptFlows.Wing wing, FlightState state, Place place) {
        FlowResult flow = wing.level(state, place.stationMm());
        SideFlow side = place.side() == SurfaceSide.UPPER ? flow.upper() : flow.lower();
        double reynolds = wing.reynolds(state, place.stationMm());
        LayerHere layer = LayerHere.of(side, place.chordFraction(), wing.chordMm(place.stationMm()));
        Double thickness = layer.thicknessMm();
        Double height = place.heightMm();
        return new SpeedPoint.RowPoint(
                place.index(),
                wing.lift(state).at(place.stationMm()),
                reynolds,
                flow.profileDragCoefficient() != null,
                side.separationX(),
                thickness,
                thickness == null || height == null ? null : Double.valueOf(height / thickness));
    }
}
