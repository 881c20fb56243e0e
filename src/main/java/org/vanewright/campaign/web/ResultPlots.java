package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.campaign.reduction.ReducedCampaign;
import org.vanewright.campaign.reduction.ReducedConfiguration;
import org.vanewright.campaign.reduction.SpeedCalibration;
import org.vanewright.engineering.flighttest.PositionErrorCurve;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.platform.plot.Curve;
import org.vanewright.platform.plot.CurvePlot;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotPoint;
import org.vanewright.record.RevisionRef;

/** Plots of a reduced campaign; every single test point stays visible. */
final class ResultPlots {
    private static final double BESIDE = 0.25;
    private static final double SPREAD = 0.15;
    private static final int CURVE_POINTS = 40;

    private ResultPlots() {}

    /**
     * A plot before it is drawn.
     *
     * @param key names it within its campaign
     * @param caption what stands beneath it
     */
    record Named(String key, CurvePlot plot, String caption) {
        /** Drawn in the page. */
        DrawnPlot drawn(String idPrefix) {
            return DrawnPlot.of(plot, idPrefix + key, caption);
        }

        /** As a file of its own. */
        DrawnPlot at(RevisionRef campaign) {
            return DrawnPlot.at(
                    "/campaigns/" + campaign.slug() + "/revisions/" + campaign.revision() + "/plots/" + key + ".svg",
                    plot,
                    caption);
        }
    }

    static List<Named> of(ReducedCampaign reduced) {
        List<Named> plots = new ArrayList<>();
        if (reduced.points().findAny().isPresent()) {
            plots.add(byConfiguration(reduced));
            plots.add(inOrder(reduced));
        }
        if (reduced.calibration().curve() != null) {
            plots.add(positionError(reduced.calibration(), reduced.calibration().curve()));
        }
        return List.copyOf(plots);
    }

    private static String label(ReducedCampaign reduced) {
        return reduced.measure().label() + ", " + reduced.measure().unit();
    }

    private static Named byConfiguration(ReducedCampaign reduced) {
        List<Curve> curves = new ArrayList<>();
        List<PlotPoint> intervals = new ArrayList<>();
        List<ReducedConfiguration> all = reduced.configurations();
        int most = Math.min(all.size(), CurvePlot.MOST_CURVES - 1);
        for (int i = 0; i < most; i++) {
            List<PlotPoint> points = new ArrayList<>();
            int count = all.get(i).points().size();
            for (int k = 0; k < count; k++) {
                double aside = count == 1 ? 0 : SPREAD * (2.0 * k / (count - 1) - 1);
                points.add(
                        new PlotPoint(i + 1 + aside, all.get(i).points().get(k).compared()));
            }
            curves.add(new Curve(all.get(i).label(), points, Curve.Look.POINTS));
            Interval interval = all.get(i).interval();
            if (interval != null) {
                intervals.add(new PlotPoint(i + 1 + BESIDE, interval.low()));
                intervals.add(new PlotPoint(i + 1 + BESIDE, interval.high()));
                intervals.add(new PlotPoint(i + 1 + BESIDE, Double.NaN));
            }
        }
        if (!intervals.isEmpty()) {
            curves.add(new Curve("95 % interval of the mean", intervals, Curve.Look.LINE));
        }
        CurvePlot plot = new CurvePlot(
                "Test points of each configuration with the interval of their mean",
                PlotAxis.counting("Configuration, in the order of the legend", 0.5, most + 0.5),
                PlotAxis.of(label(reduced)),
                curves,
                List.of());
        return new Named(
                "points",
                plot,
                "Every test point at standard conditions; beside them the 95 % interval of the mean, from scatter alone.");
    }

    private static Named inOrder(ReducedCampaign reduced) {
        List<Curve> curves = new ArrayList<>();
        for (ReducedConfiguration each : reduced.configurations()) {
            if (curves.size() < CurvePlot.MOST_CURVES) {
                curves.add(new Curve(
                        each.label(),
                        each.points().stream()
                                .map(p -> new PlotPoint(p.number(), p.compared()))
                                .toList(),
                        Curve.Look.POINTS));
            }
        }
        CurvePlot plot = new CurvePlot(
                "Test points in the order of flying",
                PlotAxis.counting("Number of the test point"),
                PlotAxis.of(label(reduced)),
                curves,
                List.of());
        return new Named("order", plot, "A drift along the order of flying shows here before it passes for a change.");
    }

    private static Named positionError(SpeedCalibration calibration, PositionErrorCurve curve) {
        List<PlotPoint> points = calibration.runs().stream()
                .map(r -> new PlotPoint(r.run().indicatedKt(), r.run().correctionKt()))
                .toList();
        List<PlotPoint> middle = new ArrayList<>();
        List<PlotPoint> low = new ArrayList<>();
        List<PlotPoint> high = new ArrayList<>();
        Interval range = curve.rangeKt();
        for (int i = 0; i <= CURVE_POINTS; i++) {
            double indicated = range.low() + (range.high() - range.low()) * i / CURVE_POINTS;
            PositionErrorCurve.Corrected at = curve.at(indicated, 0.95);
            middle.add(new PlotPoint(indicated, at.calibratedKt() - indicated));
            low.add(new PlotPoint(indicated, at.band().low() - indicated));
            high.add(new PlotPoint(indicated, at.band().high() - indicated));
        }
        CurvePlot plot = new CurvePlot(
                "Position error: calibrated less indicated airspeed",
                PlotAxis.of("Indicated airspeed, kt"),
                PlotAxis.of("Calibrated less indicated, kt"),
                List.of(
                        new Curve("Runs", points, Curve.Look.POINTS),
                        new Curve("Curve", middle, Curve.Look.LINE),
                        new Curve("95 % band, lower", low, Curve.Look.DASHED),
                        new Curve("95 % band, upper", high, Curve.Look.DASHED)),
                List.of());
        return new Named("position", plot, "Drawn over the calibrated speeds only; stalls usually lie below them.");
    }
}
