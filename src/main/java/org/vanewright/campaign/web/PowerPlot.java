package org.vanewright.campaign.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.SampleSize;
import org.vanewright.platform.plot.Curve;
import org.vanewright.platform.plot.CurvePlot;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotMark;
import org.vanewright.platform.plot.PlotPoint;

/** Chance of finding a change over the number of repeats. The same few are asked for again and again, and kept. */
final class PowerPlot {
    private static final int CURVE_POINTS = 60;

    /** With more values of each, Welch's test and the pooled one see alike. */
    private static final int FEW = 20;

    private static final Cache<Key, DrawnPlot> DRAWN =
            Caffeine.newBuilder().maximumSize(100).build();

    private record Key(SampleSize size, @Nullable Integer planned, String idPrefix) {}

    private PowerPlot() {}

    /** @param idPrefix starts every id within */
    static DrawnPlot of(SampleSize size, @Nullable Integer planned, String idPrefix) {
        return DRAWN.get(new Key(size, planned, idPrefix), key -> plot(key.size(), key.planned(), key.idPrefix()));
    }

    private static DrawnPlot plot(SampleSize size, @Nullable Integer planned, String idPrefix) {
        List<PlotPoint> points = new ArrayList<>();
        List<PlotPoint> welch = new ArrayList<>();
        size.curve(CURVE_POINTS).forEach(p -> {
            points.add(new PlotPoint(p.perGroup(), p.power()));
            if (p.perGroup() <= FEW) {
                welch.add(new PlotPoint(p.perGroup(), size.welchPowerAt(p.perGroup())));
            }
        });
        List<PlotMark> marks = new ArrayList<>();
        marks.add(new PlotMark("needed", size.perGroup(), size.powerAt(size.perGroup())));
        if (planned != null && planned >= 2 && planned != size.perGroup() && planned <= 2 * size.perGroup()) {
            marks.add(new PlotMark("planned", planned, size.powerAt(planned)));
        }
        CurvePlot plot = new CurvePlot(
                "Chance of finding the change over the number of repeats",
                PlotAxis.of("Repeats of each configuration"),
                PlotAxis.of("Chance of finding it", 0, 1),
                List.of(
                        new Curve("Scatter of both alike", points, Curve.Look.LINE),
                        new Curve("Welch’s test, up to " + FEW, welch, Curve.Look.DASHED)),
                marks);
        return DrawnPlot.of(
                plot,
                idPrefix + "power",
                "Two-sided t test, exact by the non-central t distribution; and Welch’s, by which independent test points are"
                        + " compared, exact where both scatter alike. Valid for independent test points that scatter"
                        + " normally.");
    }
}
