package org.vanewright.retention.web;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.survival.Turnbull;
import org.vanewright.platform.plot.Curve;
import org.vanewright.platform.plot.CurvePlot;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotPoint;
import org.vanewright.platform.plot.Steps;
import org.vanewright.retention.GroupStudy;

/** Curves of retention. */
final class RetentionPlots {
    private static final PlotAxis ACROSS = PlotAxis.of("Hours flown since the installation");

    private RetentionPlots() {}

    /** All groups together, as many as can be told apart. */
    static DrawnPlot together(List<GroupStudy> groups) {
        List<Curve> curves = groups.stream()
                .limit(CurvePlot.MOST_CURVES)
                .map(g -> new Curve(g.name(), between(g), Curve.Look.LINE))
                .toList();
        double lowest = groups.stream()
                .limit(CurvePlot.MOST_CURVES)
                .mapToDouble(RetentionPlots::end)
                .min()
                .orElse(1);
        return draw(
                "Share of devices still in place",
                lowest,
                curves,
                "plot-together",
                "Turnbull's estimate. Slanting pieces lie between two inspections: there, nobody knows when devices came off."
                        + (groups.size() > CurvePlot.MOST_CURVES ? " The largest groups are drawn." : ""));
    }

    /** One group with both kinds of limits. */
    static DrawnPlot alone(GroupStudy group, String id) {
        List<Curve> curves = new ArrayList<>();
        curves.add(new Curve("Between inspections (Turnbull)", between(group), Curve.Look.LINE));
        if (!group.steps().isEmpty()) {
            curves.add(new Curve(
                    "As found (Kaplan-Meier)", steps(group, s -> s.step().survival()), Curve.Look.DASHED));
            curves.add(
                    new Curve("Lower limit, devices", steps(group, s -> s.step().low()), Curve.Look.DOTTED));
            curves.add(
                    new Curve("Upper limit, devices", steps(group, s -> s.step().high()), Curve.Look.DOTTED));
            if (group.steps().stream().anyMatch(s -> s.shared() != null)) {
                curves.add(new Curve(
                        "Lower limit, installations", steps(group, shared(Interval::low)), Curve.Look.DOTTED));
                curves.add(new Curve(
                        "Upper limit, installations", steps(group, shared(Interval::high)), Curve.Look.DOTTED));
            }
        }
        double lowest = group.steps().stream()
                .mapToDouble(s -> Math.min(
                        s.step().low(),
                        number(s.shared() == null ? null : s.shared().low(), 1)))
                .min()
                .orElse(1);
        return draw(
                "Share of devices still in place: " + group.name(),
                lowest,
                curves,
                id,
                "95 % limits of the curve as found, at each time by itself: as if each device had a fate of its own, and with"
                        + " the installation as the unit. What lies beyond the last inspection is not known.");
    }

    private static Function<GroupStudy.Step, @Nullable Double> shared(Function<Interval, Double> end) {
        return s -> s.shared() == null ? null : end.apply(s.shared());
    }

    private static double number(@Nullable Double value, double otherwise) {
        return value == null ? otherwise : value;
    }

    private static DrawnPlot draw(String title, double lowest, List<Curve> curves, String id, String caption) {
        double low = Math.max(0, Math.floor(10 * (lowest - 0.02)) / 10);
        return DrawnPlot.of(
                new CurvePlot(title, ACROSS, PlotAxis.of("Share in place", low, 1.01), curves, List.of()), id, caption);
    }

    private static double end(GroupStudy group) {
        return group.curve().survivalAt(group.foundCurve().longestHours());
    }

    /** Level where the share is known, slanting where it is not. */
    private static List<PlotPoint> between(GroupStudy group) {
        List<PlotPoint> points = new ArrayList<>();
        points.add(new PlotPoint(0, 1));
        for (Turnbull.Place place : group.curve().places()) {
            if (place.byHours() < Double.POSITIVE_INFINITY) {
                points.add(new PlotPoint(place.afterHours(), group.curve().survivalAt(place.afterHours())));
                points.add(new PlotPoint(place.byHours(), group.curve().survivalAt(place.byHours())));
            }
        }
        double longest = group.foundCurve().longestHours();
        points.add(new PlotPoint(longest, end(group)));
        return points;
    }

    private static List<PlotPoint> steps(GroupStudy group, Function<GroupStudy.Step, @Nullable Double> value) {
        List<PlotPoint> changes = new ArrayList<>();
        for (GroupStudy.Step step : group.steps()) {
            Double at = value.apply(step);
            if (at != null) {
                changes.add(new PlotPoint(step.step().hours(), at));
            }
        }
        return Steps.of(new PlotPoint(0, 1), changes, group.foundCurve().longestHours());
    }
}
