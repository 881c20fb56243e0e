package org.vanewright.bench.web.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.flow.FlowResult;
import org.vanewright.engineering.flow.LayerStation;
import org.vanewright.engineering.flow.SideFlow;
import org.vanewright.platform.plot.Curve;
import org.vanewright.platform.plot.Curve.Look;
import org.vanewright.platform.plot.CurvePlot;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotMark;
import org.vanewright.platform.plot.PlotPoint;

/** A flow along the chord. */
final class FlowPlots {
    private static final PlotAxis CHORD = PlotAxis.of("Position along the chord, x/c", 0, 1);
    private static final double PERCENT = 100;

    /** What is plotted of a station; null where there is none. */
    private interface Quantity extends Function<LayerStation, @Nullable Double> {}

    private FlowPlots() {}

    static List<DrawnPlot> of(FlowResult flow) {
        Stream<DrawnPlot> outer = Stream.of(pressure(flow), speed(flow));
        return (flow.coupling() == null ? outer : Stream.concat(outer, Stream.of(thickness(flow), shape(flow))))
                .toList();
    }

    private static DrawnPlot pressure(FlowResult flow) {
        PlotAxis up = new PlotAxis("Pressure coefficient (suction upward)", null, null, true, false);
        return drawn(
                "pressure",
                "Pressure coefficient along the chord",
                up,
                sides(flow, LayerStation::pressureCoefficient),
                marks(flow, LayerStation::pressureCoefficient),
                "Pressure less that of the free stream, over its dynamic pressure; suction is drawn upward.");
    }

    private static DrawnPlot speed(FlowResult flow) {
        return drawn(
                "speed",
                "Speed along the chord",
                PlotAxis.of("Speed over true airspeed"),
                sides(flow, LayerStation::speedRatio),
                marks(flow, LayerStation::speedRatio),
                "Speed at the edge of the boundary layer over true airspeed.");
    }

    private static DrawnPlot thickness(FlowResult flow) {
        Quantity thickness = s -> percent(s.thickness());
        Quantity displacement = s -> percent(s.displacementThickness());
        return drawn(
                "thickness",
                "Thickness of the boundary layers along the chord",
                PlotAxis.of("Thickness, % of the chord"),
                List.of(
                        curve("upper, thickness", flow.upper(), thickness, Look.LINE),
                        curve("upper, displacement", flow.upper(), displacement, Look.DASHED),
                        curve("lower, thickness", flow.lower(), thickness, Look.LINE),
                        curve("lower, displacement", flow.lower(), displacement, Look.DASHED)),
                marks(flow, thickness),
                "Thickness to 99 % of the speed outside, and displacement thickness, by which the layer pushes the outer"
                        + " flow aside. Both end at turbulent separation.");
    }

    private static DrawnPlot shape(FlowResult flow) {
        return drawn(
                "shape",
                "Shape factor along the chord",
                PlotAxis.of("Shape factor"),
                sides(flow, LayerStation::shapeFactor),
                marks(flow, LayerStation::shapeFactor),
                "Displacement over momentum thickness. It falls where the layer turns turbulent; in a turbulent layer it"
                        + " rises towards separation, which is taken to stand at 2.4.");
    }

    private static DrawnPlot drawn(
            String id, String title, PlotAxis up, List<Curve> curves, List<PlotMark> marks, String caption) {
        return DrawnPlot.of(new CurvePlot(title, CHORD, up, curves, marks), "plot-" + id, caption);
    }

    private static List<Curve> sides(FlowResult flow, Quantity quantity) {
        return List.of(
                curve("upper side", flow.upper(), quantity, Look.LINE),
                curve("lower side", flow.lower(), quantity, Look.DASHED));
    }

    private static Curve curve(String name, SideFlow side, Quantity quantity, Look look) {
        return new Curve(
                name,
                side.stations().stream()
                        .map(s -> new PlotPoint(s.x(), orNaN(quantity.apply(s))))
                        .toList(),
                look);
    }

    private static List<PlotMark> marks(FlowResult flow, Quantity quantity) {
        List<PlotMark> marks = new ArrayList<>();
        side(marks, "upper", flow.upper(), quantity);
        side(marks, "lower", flow.lower(), quantity);
        return marks;
    }

    private static void side(List<PlotMark> marks, String name, SideFlow side, Quantity quantity) {
        mark(marks, name + " transition", side, side.transitionX(), quantity);
        mark(marks, name + " separation", side, side.separationX(), quantity);
    }

    /** At the nearest station that has a value. */
    private static void mark(List<PlotMark> marks, String label, SideFlow side, @Nullable Double x, Quantity quantity) {
        if (x == null) {
            return;
        }
        side.stations().stream()
                .filter(s -> quantity.apply(s) != null)
                .min(Comparator.comparingDouble(s -> Math.abs(s.x() - x)))
                .ifPresent(s -> marks.add(new PlotMark(label, x, orNaN(quantity.apply(s)))));
    }

    private static @Nullable Double percent(@Nullable Double fraction) {
        return fraction == null ? null : (Double) (PERCENT * fraction);
    }

    private static double orNaN(@Nullable Double value) {
        return value == null ? Double.NaN : value;
    }
}
