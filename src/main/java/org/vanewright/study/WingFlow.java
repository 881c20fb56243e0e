package org.vanewright.study;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.flow.FlowCondition;
import org.vanewright.engineering.flow.FlowResult;
import org.vanewright.engineering.flow.SectionFlow;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.span.LiftingLine;
import org.vanewright.engineering.span.SpanStation;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;

/**
 * The flow over each section of a wing in level flight: local lift by the lifting line, with slope and zero-lift angle of
 * each end section from its own flow with boundary layers. Between the ends of a panel the nearer end's section stands;
 * between the roots the root section goes on.
 */
final class WingFlow {
    private static final double SECOND_ANGLE_RAD = Math.toRadians(4);

    private final WingShape shape;
    private final FlightState state;
    private final List<Ends> panels = new ArrayList<>();
    private final LiftingLine line;
    private final LiftingLine.Loading loading;

    /** A section with its flow and what that says of its lift. */
    private record End(Section section, SectionFlow flow, double slopePerRad, double zeroLiftRad) {}

    /** Both ends of a panel, each with its twist against the root. */
    private record Ends(End inner, End outer, double innerTwistRad, double outerTwistRad) {}

    /** @param share of the aircraft's weight that this wing carries; 0 for a tail, which is taken to carry none */
    WingFlow(WingShape shape, FlightState state, double share) {
        this.shape = shape;
        this.state = state;
        double twist = 0;
        List<End> known = new ArrayList<>();
        for (WingPanel panel : shape.panels()) {
            double outer = twist + Math.toRadians(panel.twistDeg());
            panels.add(new Ends(
                    end(panel.innerSection(), panel.innerChordMm(), known),
                    end(panel.outerSection(), panel.outerChordMm(), known),
                    twist,
                    outer));
            twist = outer;
        }
        line = new LiftingLine(shape.outerStationMm(), this::station);
        loading = line.atLiftCoefficient(share * state.liftCoefficient(line.areaM2()));
    }

    private End end(Section section, double chordMm, List<End> known) {
        for (End end : known) {
            if (end.section().sameShapeAs(section)) {
                return end;
            }
        }
        SectionFlow flow = SectionFlow.of(section, SectionFlow.USUAL_PANELS);
        FlowCondition condition = FlowCondition.free(reynolds(chordMm));
        FlowResult level = flow.at(0, condition);
        FlowResult raised = flow.at(SECOND_ANGLE_RAD, condition);
        double slope = (raised.liftCoefficient() - level.liftCoefficient()) / SECOND_ANGLE_RAD;
        End end = new End(section, flow, slope, -level.liftCoefficient() / slope);
        known.add(end);
        return end;
    }

    private SpanStation station(double stationMm) {
        int index = shape.panelIndex(stationMm);
        WingPanel panel = shape.panels().get(index);
        Ends ends = panels.get(index);
        double t = Math.min(1, Math.max(0, panel.spanFraction(stationMm)));
        double slope = mix(ends.inner().slopePerRad(), ends.outer().slopePerRad(), t);
        double zeroLift = mix(
                ends.inner().zeroLiftRad() - ends.innerTwistRad(),
                ends.outer().zeroLiftRad() - ends.outerTwistRad(),
                t);
        return new SpanStation(chordMm(stationMm), slope, zeroLift);
    }

    private static double mix(double inner, double outer, double t) {
        return inner + t * (outer - inner);
    }

    double chordMm(double stationMm) {
        double inside = Math.max(stationMm, shape.innerStationMm());
        return shape.panels().get(shape.panelIndex(inside)).chordMm(inside);
    }

    /** Section whose flow stands for that station. */
    SectionFlow sectionFlow(double stationMm) {
        return nearest(stationMm).flow();
    }

    Section section(double stationMm) {
        return nearest(stationMm).section();
    }

    private End nearest(double stationMm) {
        int index = shape.panelIndex(stationMm);
        Ends ends = panels.get(index);
        return shape.panels().get(index).spanFraction(stationMm) <= 0.5 ? ends.inner() : ends.outer();
    }

    double reynolds(double chordMm) {
        return Math.max(1e4, state.reynolds(chordMm));
    }

    double liftCoefficientAt(double stationMm) {
        return loading.liftCoefficientAt(stationMm);
    }

    /** Of the whole wing, on {@link #areaM2}. */
    double liftCoefficient() {
        return loading.liftCoefficient();
    }

    double areaM2() {
        return line.areaM2();
    }

    double aspectRatio() {
        return line.aspectRatio();
    }

    /** Local lift at evenly spaced stations from the centre line outward: station in mm, coefficient. */
    List<double[]> liftAlongTheSpan(int count) {
        List<double[]> found = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double station = shape.outerStationMm() * i / count;
            found.add(new double[] {station, liftCoefficientAt(station)});
        }
        return found;
    }
}
