package org.vanewright.study;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.vanewright.engineering.flow.FlowCondition;
import org.vanewright.engineering.flow.FlowResult;
import org.vanewright.engineering.span.LiftingLine;
import org.vanewright.engineering.span.SpanStation;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;

/**
 * Lift along the span of a wing in level flight by the lifting line, with slope and zero-lift angle of each section from
 * its own flow with boundary layers. It keeps no flow, so that many may be kept.
 */
final class WingLift {
    private static final double SECOND_ANGLE_RAD = Math.toRadians(4);

    private final WingShape shape;
    private final List<Slopes> panels = new ArrayList<>();
    private final LiftingLine line;
    private final LiftingLine.Loading loading;

    private record Slope(double perRad, double zeroLiftRad) {}

    /** Both ends of a panel; zero lift with the twist against the root. */
    private record Slopes(double innerPerRad, double outerPerRad, double innerZeroRad, double outerZeroRad) {}

    /** @param share of the aircraft's weight that this wing carries; 0 for a tail, which is taken to carry none */
    WingLift(WingSections sections, FlightState state, double share) {
        shape = sections.shape();
        Map<WingSections.End, Slope> known = new IdentityHashMap<>();
        double twist = 0;
        for (int i = 0; i < shape.panels().size(); i++) {
            WingPanel panel = shape.panels().get(i);
            double outer = twist + Math.toRadians(panel.twistDeg());
            Slope in = known.computeIfAbsent(sections.panels().get(i).inner(), end -> slope(end, state));
            Slope out = known.computeIfAbsent(sections.panels().get(i).outer(), end -> slope(end, state));
            panels.add(new Slopes(in.perRad(), out.perRad(), in.zeroLiftRad() - twist, out.zeroLiftRad() - outer));
            twist = outer;
        }
        line = new LiftingLine(shape.outerStationMm(), this::station);
        loading = line.atLiftCoefficient(share * state.liftCoefficient(line.areaM2()));
    }

    private static Slope slope(WingSections.End end, FlightState state) {
        FlowCondition condition = FlowCondition.free(state.chordReynolds(end.chordMm()));
        FlowResult level = end.flow().at(0, condition);
        FlowResult raised = end.flow().at(SECOND_ANGLE_RAD, condition);
        double perRad = (raised.liftCoefficient() - level.liftCoefficient()) / SECOND_ANGLE_RAD;
        return new Slope(perRad, -level.liftCoefficient() / perRad);
    }

    private SpanStation station(double stationMm) {
        int index = shape.panelIndex(stationMm);
        WingPanel panel = shape.panels().get(index);
        Slopes ends = panels.get(index);
        double t = Math.min(1, Math.max(0, panel.spanFraction(stationMm)));
        double inside = Math.max(stationMm, shape.innerStationMm());
        return new SpanStation(
                shape.panels().get(shape.panelIndex(inside)).chordMm(inside),
                mix(ends.innerPerRad(), ends.outerPerRad(), t),
                mix(ends.innerZeroRad(), ends.outerZeroRad(), t));
    }

    private static double mix(double inner, double outer, double t) {
        return inner + t * (outer - inner);
    }

    double at(double stationMm) {
        return loading.liftCoefficientAt(stationMm);
    }

    /** Of the whole wing, on {@link #areaM2}. */
    double coefficient() {
        return loading.liftCoefficient();
    }

    double areaM2() {
        return line.areaM2();
    }

    double aspectRatio() {
        return line.aspectRatio();
    }

    /** Local lift at evenly spaced stations from the centre line outward. */
    List<Study.SpanLift> alongTheSpan(int count) {
        List<Study.SpanLift> found = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double station = shape.outerStationMm() * i / count;
            found.add(new Study.SpanLift(station, at(station)));
        }
        return found;
    }
}
