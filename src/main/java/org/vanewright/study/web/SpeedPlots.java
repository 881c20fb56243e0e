package org.vanewright.study.web;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.vanewright.platform.plot.Curve;
import org.vanewright.platform.plot.CurvePlot;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotMark;
import org.vanewright.platform.plot.PlotPoint;
import org.vanewright.study.Place;
import org.vanewright.study.SpeedPoint;
import org.vanewright.study.SpeedPoint.RowPoint;

/** The curves of a sweep along the speed, one for each row. */
final class SpeedPlots {
    private SpeedPlots() {}

    static List<DrawnPlot> of(List<SpeedPoint> points, List<Place> places, double speedKt, String id) {
        if (points.isEmpty() || places.isEmpty()) {
            return List.of();
        }
        PlotMark now = new PlotMark("this condition", speedKt, null);
        return List.of(
                plot(
                        "Lift coefficient of the section at each row",
                        "Lift coefficient",
                        points,
                        places,
                        now,
                        id + "lift",
                        RowPoint::localLift,
                        "What level flight asks of the section. It falls with the square of the speed."),
                plot(
                        "Thickness of the boundary layer at each row",
                        "Thickness, mm",
                        points,
                        places,
                        now,
                        id + "thickness",
                        RowPoint::thicknessMm,
                        "Slower means a higher angle, and a thicker layer on the upper side. Near the stall the method may"
                                + " claim no more: the table says where."),
                plot(
                        "Where the layer separates at each row",
                        "x/c",
                        points,
                        places,
                        now,
                        id + "separation",
                        r -> r.separationX() == null ? Double.valueOf(1) : r.separationX(),
                        "1 means attached to the trailing edge."));
    }

    private static DrawnPlot plot(
            String title,
            String up,
            List<SpeedPoint> points,
            List<Place> places,
            PlotMark now,
            String id,
            Function<RowPoint, @Nullable Double> value,
            String caption) {
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < Math.min(places.size(), CurvePlot.MOST_CURVES); i++) {
            List<PlotPoint> found = new ArrayList<>();
            for (SpeedPoint point : points) {
                Double y = value.apply(point.rows().get(i));
                if (y != null) {
                    found.add(new PlotPoint(point.calibratedAirspeedKt(), y));
                }
            }
            curves.add(new Curve(places.get(i).name(), found, i % 2 == 0 ? Curve.Look.LINE : Curve.Look.DASHED));
        }
        CurvePlot plot =
                new CurvePlot(title, PlotAxis.of("Calibrated airspeed, kt"), PlotAxis.of(up), curves, List.of(now));
        return DrawnPlot.of(plot, id, caption);
    }
}
