package org.vanewright.study.web;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.flow.LayerStation;
import org.vanewright.engineering.flow.PolarPoint;
import org.vanewright.engineering.flow.SideFlow;
import org.vanewright.platform.plot.Curve;
import org.vanewright.platform.plot.CurvePlot;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotMark;
import org.vanewright.platform.plot.PlotPoint;
import org.vanewright.study.Place;
import org.vanewright.study.StationFlow;
import org.vanewright.study.Study;

/** The curves of a study. */
final class StudyPlots {
    private StudyPlots() {}

    static DrawnPlot speed(StationFlow here, Place place, String id) {
        CurvePlot plot = new CurvePlot(
                "Speed at the edge of the boundary layer over that of the free stream",
                PlotAxis.of("x/c", 0, 1),
                PlotAxis.of("Speed ratio"),
                both(here, s -> s.speedRatio()),
                List.of(mark(place)));
        return DrawnPlot.of(plot, id, "Where the speed falls, the layer thickens; where it falls fast, it separates.");
    }

    static DrawnPlot shape(StationFlow here, Place place, String id) {
        List<PlotMark> marks = new ArrayList<>(List.of(mark(place)));
        Double separation = here.separationX(place.side());
        if (separation != null) {
            marks.add(new PlotMark("separates", separation, null));
        }
        CurvePlot plot = new CurvePlot(
                "Shape factor of the boundary layer",
                PlotAxis.of("x/c", 0, 1),
                PlotAxis.of("Shape factor H"),
                both(here, LayerStation::shapeFactor),
                marks);
        return DrawnPlot.of(
                plot,
                id,
                "About 2.6 where laminar, 1.4 where turbulent and at ease; a turbulent layer near 2.4 separates.");
    }

    static DrawnPlot separation(StationFlow here, Place place, String id) {
        List<PlotPoint> claimed = new ArrayList<>();
        List<PlotPoint> beyond = new ArrayList<>();
        for (PolarPoint point : here.polar().points()) {
            Double found = StationFlow.separationX(point, place.side());
            (point.claimed() ? claimed : beyond)
                    .add(new PlotPoint(point.angleOfAttackDeg(), found == null ? 1 : found));
        }
        CurvePlot plot = new CurvePlot(
                "Where the turbulent layer separates as the angle of attack rises",
                PlotAxis.of("Angle of attack, °"),
                PlotAxis.of("x/c", 0, 1.02),
                claimedOrNot(claimed, beyond),
                List.of(new PlotMark("this condition", here.flow().angleOfAttackDeg(), null)));
        return DrawnPlot.of(
                plot, id, "1 means attached to the trailing edge. A device ahead of this line can act on it.");
    }

    private static List<Curve> claimedOrNot(List<PlotPoint> claimed, List<PlotPoint> beyond) {
        List<Curve> curves = new ArrayList<>(List.of(new Curve("Claimed by the method", claimed, Curve.Look.LINE)));
        if (!beyond.isEmpty()) {
            curves.add(new Curve("Beyond what it claims", beyond, Curve.Look.DOTTED));
        }
        return curves;
    }

    static DrawnPlot span(String surface, List<Study.SpanLift> lift, List<Place> places, String id) {
        List<PlotPoint> points = lift.stream()
                .map(p -> new PlotPoint(p.stationMm(), p.liftCoefficient()))
                .toList();
        List<PlotMark> marks = places.stream()
                .map(p -> new PlotMark(p.name(), p.stationMm(), null))
                .toList();
        CurvePlot plot = new CurvePlot(
                "Local lift coefficient along the span",
                PlotAxis.of("Span station, mm"),
                PlotAxis.of("Lift coefficient"),
                List.of(new Curve(surface, points, Curve.Look.LINE)),
                marks);
        return DrawnPlot.of(plot, id, "Where it is highest, the section stalls first, if all sections are alike.");
    }

    private static PlotMark mark(Place place) {
        return new PlotMark(place.heightMm() == null ? "here" : "device", place.chordFraction(), null);
    }

    private static List<Curve> both(StationFlow here, Function<LayerStation, @Nullable Double> value) {
        return List.of(
                new Curve("Upper side", points(here.flow().upper(), value), Curve.Look.LINE),
                new Curve("Lower side", points(here.flow().lower(), value), Curve.Look.DASHED));
    }

    private static List<PlotPoint> points(SideFlow side, Function<LayerStation, @Nullable Double> value) {
        List<PlotPoint> points = new ArrayList<>();
        for (LayerStation station : side.stations()) {
            Double y = value.apply(station);
            // the stagnation point's own layer has no shape that a plot could show beside the rest
            if (y != null && y < 5) {
                points.add(new PlotPoint(station.x(), y));
            }
        }
        return points;
    }
}
