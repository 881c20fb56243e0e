package org.vanewright.evidence.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.OperatingBasis;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.evidence.EvidenceStudy;
import org.vanewright.evidence.EvidenceStudy.Item;
import org.vanewright.evidence.Finding;
import org.vanewright.evidence.Scale;
import org.vanewright.evidence.Summary;
import org.vanewright.platform.plot.Curve;
import org.vanewright.platform.plot.CurvePlot;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotMark;
import org.vanewright.platform.plot.PlotPoint;

/** Every comparison as a point with its interval. */
final class EvidencePlots {
    /** More points than these cannot be told apart, and make the page heavy. */
    static final int MOST_POINTS = 300;

    private static final double APART = 0.012;
    private static final int MOST_BESIDE = 11;

    private final EvidenceStudy study;
    private final String axis;

    EvidencePlots(EvidenceStudy study) {
        this.study = study;
        this.axis = "Change, " + study.query().scale().unit(study.query().quantity());
    }

    List<DrawnPlot> all() {
        List<DrawnPlot> plots = new ArrayList<>();
        add(
                plots,
                along(
                        "chord",
                        "chord position",
                        p -> around("Chord position, % of the chord", 2, p),
                        percentOfChord(),
                        ""));
        add(
                plots,
                along(
                        "height",
                        "height over boundary-layer thickness",
                        p -> around("Height over the layer’s thickness at the stall", 0.5, p),
                        Finding::heightOverThickness,
                        ""));
        add(plots, byBasis());
        return plots;
    }

    private static void add(List<DrawnPlot> plots, @Nullable DrawnPlot plot) {
        if (plot != null) {
            plots.add(plot);
        }
    }

    private static Function<Finding, @Nullable Double> percentOfChord() {
        return f -> {
            Double fraction = f.chordFraction();
            return fraction == null ? null : Double.valueOf(100 * fraction);
        };
    }

    private @Nullable DrawnPlot byBasis() {
        OperatingBasis[] all = OperatingBasis.values();
        StringBuilder key = new StringBuilder("Class:");
        for (OperatingBasis basis : all) {
            key.append(basis.ordinal() == 0 ? " " : ", ")
                    .append(basis.ordinal() + 1)
                    .append(' ')
                    .append(basis.label().toLowerCase(Locale.ROOT));
        }
        return along(
                "class",
                "class of the aircraft",
                p -> PlotAxis.counting("Class of the aircraft, by its number below", 0.5, all.length + 0.5),
                f -> f.operatingBasis() == null
                        ? null
                        : Double.valueOf(f.operatingBasis().ordinal() + 1),
                key + ".");
    }

    /** From a little below the least to a little above the largest, so that ends of intervals are not cut off. */
    private static PlotAxis around(String label, double least, List<PlotPoint> points) {
        double low = points.stream().mapToDouble(PlotPoint::x).min().orElse(0);
        double high = points.stream().mapToDouble(PlotPoint::x).max().orElse(0);
        double room = Math.max(least, 0.1 * (high - low));
        return PlotAxis.of(label, Math.max(0, low - room), high + room);
    }

    private @Nullable DrawnPlot along(
            String id,
            String of,
            Function<List<PlotPoint>, PlotAxis> axisFor,
            Function<Finding, @Nullable Double> x,
            String key) {
        List<Item> drawn = new ArrayList<>();
        List<PlotPoint> places = new ArrayList<>();
        for (Item item : study.items()) {
            Double place = x.apply(item.finding());
            Scale.Change change = item.change();
            if (place != null && change != null && drawn.size() < MOST_POINTS) {
                drawn.add(item);
                places.add(new PlotPoint(place, change.value()));
            }
        }
        if (drawn.isEmpty()) {
            return null;
        }
        PlotAxis across = axisFor.apply(places);
        Points counted = new Points();
        Points others = new Points();
        Map<Long, Integer> met = new HashMap<>();
        double width = wide(across);
        for (int i = 0; i < drawn.size(); i++) {
            double place = places.get(i).x();
            int before = met.merge(Math.round(place / width / APART), 1, Integer::sum) - 1;
            Scale.Change change = drawn.get(i).change();
            if (change != null) {
                (drawn.get(i).counted() ? counted : others).add(place + aside(before) * width, change);
            }
        }
        CurvePlot plot = new CurvePlot(
                study.query().quantity().label() + ": change against " + of,
                across,
                withZero(counted, others),
                curves(counted, others),
                List.of());
        return DrawnPlot.of(plot, "evidence-" + id, caption(study.items().size() - drawn.size(), key));
    }

    private static double wide(PlotAxis axis) {
        return axis.low() == null || axis.high() == null ? 1 : axis.high() - axis.low();
    }

    /** As a share of the axis: those at one place stand beside each other, alternately to either side. */
    private static double aside(int before) {
        int steps = (before % MOST_BESIDE + 1) / 2;
        return (before % 2 == 0 ? APART : -APART) * steps;
    }

    private static String caption(int nowhere, String key) {
        return "Each point is one comparison with its own 95 % interval; those at one place stand a little apart. "
                + key
                + (nowhere == 0
                        ? ""
                        : " " + nowhere + (nowhere == 1 ? " is" : " are")
                                + " not drawn: not known there, or more than can be told apart.");
    }

    private static List<Curve> curves(Points counted, Points others) {
        List<Curve> curves = new ArrayList<>();
        if (!counted.drawn.isEmpty()) {
            curves.add(new Curve("Counted in the summary", counted.drawn, Curve.Look.INTERVALS));
        }
        if (!others.drawn.isEmpty()) {
            curves.add(new Curve("Not comparable with them", others.drawn, Curve.Look.DOTTED_INTERVALS));
        }
        return curves;
    }

    /** No change is what each is judged against, so it is always in sight. */
    private PlotAxis withZero(Points first, Points second) {
        double low = Math.min(0, Math.min(first.low, second.low));
        double high = Math.max(0, Math.max(first.high, second.high));
        double room = 0.06 * Math.max(high - low, 0.1);
        return PlotAxis.of(axis, low - room, high + room);
    }

    /** Change against standard error, with the lines between which campaigns of one true effect would lie. */
    DrawnPlot funnel(Summary summary) {
        List<PlotPoint> points = new ArrayList<>();
        double widest = 0;
        for (Item item : study.counted()) {
            Scale.Change change = item.change();
            if (change != null) {
                points.add(new PlotPoint(change.value(), change.standardError()));
                widest = Math.max(widest, change.standardError());
            }
        }
        double bottom = 1.1 * widest;
        Interval ends = summary.funnel().at(bottom);
        double centre = summary.funnel().centre();
        CurvePlot plot = new CurvePlot(
                study.query().quantity().label() + ": funnel of "
                        + summary.effects().count() + " campaigns",
                PlotAxis.of(axis),
                new PlotAxis("Standard error, small ones above", 0.0, bottom, true, false),
                List.of(
                        new Curve("Campaigns", points, Curve.Look.POINTS),
                        new Curve("lower 95 % line", line(centre, ends.low(), bottom), Curve.Look.DASHED),
                        new Curve("upper 95 % line", line(centre, ends.high(), bottom), Curve.Look.DASHED)),
                List.of(new PlotMark("mean", centre, null)));
        return DrawnPlot.of(
                plot,
                "evidence-funnel",
                "Precise campaigns stand high. With one true change all but one in twenty would lie between the dashed lines; "
                        + summary.outside() + " of " + summary.effects().count()
                        + " lie outside. A gap on one side low down may be campaigns that were never published, or small ones"
                        + " that differ in other ways.");
    }

    private static List<PlotPoint> line(double centre, double end, double bottom) {
        return List.of(new PlotPoint(centre, 0), new PlotPoint(end, bottom));
    }

    private static final class Points {
        private final List<PlotPoint> drawn = new ArrayList<>();
        private double low;
        private double high;

        void add(double x, Scale.Change change) {
            drawn.add(new PlotPoint(x, change.interval().low()));
            drawn.add(new PlotPoint(x, change.value()));
            drawn.add(new PlotPoint(x, change.interval().high()));
            drawn.add(new PlotPoint(x, Double.NaN));
            low = Math.min(low, change.interval().low());
            high = Math.max(high, change.interval().high());
        }
    }
}
