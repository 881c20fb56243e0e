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
import org.vanewright.platform.plot.MapPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotMark;
import org.vanewright.platform.plot.PlotPoint;
import org.vanewright.platform.plot.SvgPlots;
import org.vanewright.study.PlacementMap;
import org.vanewright.study.RowStudy;
import org.vanewright.study.Study;

/** The curves of a study. */
final class StudyPlots {
    private StudyPlots() {}

    static DrawnPlot speed(RowStudy study, String id) {
        CurvePlot plot = new CurvePlot(
                "Speed at the edge of the boundary layer over that of the free stream",
                PlotAxis.of("x/c", 0, 1),
                PlotAxis.of("Speed ratio"),
                both(study, s -> s.speedRatio()),
                List.of(device(study)));
        return DrawnPlot.of(plot, id, "Where the speed falls, the layer thickens; where it falls fast, it separates.");
    }

    static DrawnPlot shape(RowStudy study, String id) {
        List<PlotMark> marks = new ArrayList<>(List.of(device(study)));
        if (study.separationX() != null) {
            marks.add(new PlotMark("separates", study.separationX(), null));
        }
        CurvePlot plot = new CurvePlot(
                "Shape factor of the boundary layer",
                PlotAxis.of("x/c", 0, 1),
                PlotAxis.of("Shape factor H"),
                both(study, LayerStation::shapeFactor),
                marks);
        return DrawnPlot.of(
                plot,
                id,
                "About 2.6 where laminar, 1.4 where turbulent and at ease; a turbulent layer near 2.4 separates.");
    }

    static DrawnPlot separation(RowStudy study, String id) {
        List<PlotPoint> claimed = new ArrayList<>();
        List<PlotPoint> beyond = new ArrayList<>();
        for (PolarPoint point : study.polar().points()) {
            Double found = study.separationAt(point);
            (point.claimed() ? claimed : beyond)
                    .add(new PlotPoint(point.angleOfAttackDeg(), found == null ? 1 : found));
        }
        List<Curve> curves = new ArrayList<>(List.of(new Curve("Claimed by the method", claimed, Curve.Look.LINE)));
        if (!beyond.isEmpty()) {
            curves.add(new Curve("Beyond what it claims", beyond, Curve.Look.DOTTED));
        }
        CurvePlot plot = new CurvePlot(
                "Where the turbulent layer separates as the angle of attack rises",
                PlotAxis.of("Angle of attack, °"),
                PlotAxis.of("x/c", 0, 1.02),
                curves,
                List.of(new PlotMark("this condition", study.flow().angleOfAttackDeg(), null)));
        return DrawnPlot.of(
                plot, id, "1 means attached to the trailing edge. A device ahead of this line can act on it.");
    }

    static DrawnPlot span(Study.Surface surface, String id) {
        List<PlotPoint> points = surface.lift().stream()
                .map(p -> new PlotPoint(p.stationMm(), p.liftCoefficient()))
                .toList();
        List<PlotMark> marks = surface.rows().stream()
                .map(r -> new PlotMark(r.row().name(), r.row().stationMm(), null))
                .toList();
        CurvePlot plot = new CurvePlot(
                "Local lift coefficient along the span",
                PlotAxis.of("Span station, mm"),
                PlotAxis.of("Lift coefficient"),
                List.of(new Curve(surface.name(), points, Curve.Look.LINE)),
                marks);
        return DrawnPlot.of(plot, id, "Where it is highest, the section stalls first, if all sections are alike.");
    }

    /** Borders between the colours of the map, in layers. */
    static final List<Double> MAP_STEPS = List.of(0.2, 0.5, 1.0, 2.0);

    static String map(RowStudy study, String id) {
        PlacementMap map = PlacementMap.of(study);
        double last = map.chordFractions()[map.chordFractions().length - 1];
        double highest = map.heightsMm()[map.heightsMm().length - 1];
        List<PlotMark> marks = new ArrayList<>();
        if (study.separationX() != null) {
            marks.add(new PlotMark("separates", study.separationX(), null));
        }
        marks.add(new PlotMark(
                "this row", study.row().chordFraction(), study.row().vane().heightMm()));
        MapPlot plot = new MapPlot(
                "Height over boundary-layer thickness, by chord position and height",
                PlotAxis.of("x/c", 0, last * 1.02),
                PlotAxis.of("Height, mm", 0, highest * 1.03),
                "h/δ",
                map.chordFractions(),
                map.heightsMm(),
                map.heightToThickness(),
                MAP_STEPS,
                marks);
        return SvgPlots.svg(plot, id, 720, 380);
    }

    private static PlotMark device(RowStudy study) {
        return new PlotMark("device", study.row().chordFraction(), null);
    }

    private static List<Curve> both(RowStudy study, Function<LayerStation, @Nullable Double> value) {
        return List.of(
                new Curve("Upper side", points(study.flow().upper(), value), Curve.Look.LINE),
                new Curve("Lower side", points(study.flow().lower(), value), Curve.Look.DASHED));
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
