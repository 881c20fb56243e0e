package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.Measure;
import org.vanewright.campaign.PlanDocument;
import org.vanewright.campaign.RepeatsDocument;
import org.vanewright.campaign.Schedule;
import org.vanewright.engineering.inference.SampleSize;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.page.Numbers;
import org.vanewright.platform.plot.Curve;
import org.vanewright.platform.plot.CurvePlot;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotMark;
import org.vanewright.platform.plot.PlotPoint;

/**
 * What follows from a plan before anything is flown.
 *
 * @param repeats how many are needed, in a sentence; null while scatter and change are not given
 * @param enough whether the planned number is that many; null likewise
 * @param power curve of power over repeats; null likewise
 * @param schedule the order of flying; null while it cannot be drawn
 */
public record PlanView(
        @Nullable String repeats,
        @Nullable Boolean enough,
        @Nullable DrawnPlot power,
        @Nullable Schedule schedule) {
    private static final int CURVE_POINTS = 60;

    /** With more values of each, Welch's test and the pooled one see alike. */
    private static final int FEW = 20;

    /** @param idPrefix starts every id within */
    static PlanView of(PlanDocument plan, String idPrefix) {
        SampleSize size = sampleSize(plan.repeats());
        Measure measure = plan.measure();
        Integer planned = plan.repeats().perConfiguration();
        return new PlanView(
                size == null || measure == null ? null : sentence(size, measure),
                size == null || planned == null ? null : (Boolean) (planned >= size.perGroup()),
                size == null ? null : plot(size, planned, idPrefix),
                Schedule.of(plan).orElse(null));
    }

    private static @Nullable SampleSize sampleSize(RepeatsDocument repeats) {
        if (repeats.scatter() == null || repeats.change() == null) {
            return null;
        }
        try {
            return SampleSize.twoGroups(
                    repeats.scatter(), repeats.change(), repeats.significanceOrUsual(), repeats.powerOrUsual());
        } catch (InvalidInputException e) {
            return null;
        }
    }

    static String sentence(SampleSize size, Measure measure) {
        return String.format(
                Locale.ROOT,
                "%s of each configuration find a change of %s %s with a chance of %.0f %%, if one scatters by %s %s and a"
                        + " false alarm in %.0f %% of campaigns without any change is accepted.",
                measure.counted(size.perGroup()),
                plain(size.difference()),
                measure.unit(),
                100 * size.power(),
                plain(size.standardDeviation()),
                measure.unit(),
                100 * size.significance());
    }

    private static String plain(double number) {
        return Numbers.trimmed(number, 2);
    }

    static DrawnPlot plot(SampleSize size, @Nullable Integer planned, String idPrefix) {
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
