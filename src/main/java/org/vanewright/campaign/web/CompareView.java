package org.vanewright.campaign.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.Measure;
import org.vanewright.campaign.reduction.Outcome;
import org.vanewright.engineering.inference.Comparison;
import org.vanewright.engineering.inference.RelativeChange;
import org.vanewright.platform.CsvCells;
import org.vanewright.platform.plot.Curve;
import org.vanewright.platform.plot.CurvePlot;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotPoint;

/**
 * Configurations side by side.
 *
 * @param rows one for each
 * @param plot change in per cent with its interval; null where there is none
 * @param cautions what does not compare
 */
public record CompareView(List<Row> rows, @Nullable DrawnPlot plot, List<String> cautions) {
    /** A configuration, written out. */
    public record Row(
            int number,
            String campaign,
            String path,
            String aircraft,
            String configuration,
            String measure,
            String points,
            String change,
            String percent,
            String lift,
            String sentence,
            boolean invented) {}

    static CompareView of(List<Outcome> outcomes) {
        List<Row> rows = new ArrayList<>();
        for (Outcome each : outcomes) {
            rows.add(row(rows.size() + 1, each));
        }
        return new CompareView(List.copyOf(rows), plot(outcomes), cautions(outcomes));
    }

    private static Row row(int number, Outcome o) {
        Measure measure = o.reduced().measure();
        Comparison c = o.conclusion().comparison();
        RelativeChange relative = o.relativeChange();
        return new Row(
                number,
                o.revision().content().name(),
                "/campaigns/" + o.revision().slug() + "/revisions/"
                        + o.revision().number(),
                o.aircraft(),
                o.conclusion().configuration().label(),
                measure.label(),
                o.reduced().baseline().points().size() + " and "
                        + o.conclusion().configuration().points().size(),
                c == null
                        ? "–"
                        : ResultView.signed(c.difference()) + " " + measure.unit() + " ("
                                + ResultView.interval(c.interval()) + ")",
                relative == null
                        ? "–"
                        : percent(relative.ratio()) + " % ("
                                + percent(relative.interval().low()) + " to "
                                + percent(relative.interval().high()) + ")",
                lift(o.liftChange()),
                o.conclusion().sentence(measure),
                o.revision().content().invented());
    }

    private static String lift(@Nullable Comparison change) {
        return change == null
                ? "–"
                : ResultView.signed(change.difference()) + " (" + ResultView.interval(change.interval()) + ")";
    }

    private static String percent(double fraction) {
        return String.format(Locale.ROOT, "%.1f", 100 * fraction).replace('-', '−');
    }

    private static @Nullable DrawnPlot plot(List<Outcome> outcomes) {
        List<PlotPoint> points = new ArrayList<>();
        List<PlotPoint> intervals = new ArrayList<>();
        for (int i = 0; i < outcomes.size(); i++) {
            RelativeChange relative = outcomes.get(i).relativeChange();
            if (relative != null) {
                points.add(new PlotPoint(i + 1, 100 * relative.ratio()));
                intervals.add(new PlotPoint(i + 1, 100 * relative.interval().low()));
                intervals.add(new PlotPoint(i + 1, 100 * relative.interval().high()));
                intervals.add(new PlotPoint(i + 1, Double.NaN));
            }
        }
        if (points.isEmpty()) {
            return null;
        }
        CurvePlot plot = new CurvePlot(
                "Change against the unmodified aircraft, in per cent",
                PlotAxis.counting("Number in the table", 0.5, outcomes.size() + 0.5),
                withZero("Change, %", intervals),
                List.of(
                        new Curve("Change", points, Curve.Look.POINTS),
                        new Curve("95 % interval", intervals, Curve.Look.LINE)),
                List.of());
        return DrawnPlot.of(plot, "compare", "Each against the unmodified aircraft of its own campaign.");
    }

    /** No change is what each is judged against, so it is always in sight. */
    private static PlotAxis withZero(String label, List<PlotPoint> points) {
        double low = points.stream()
                .mapToDouble(p -> Math.min(0, p.y()))
                .filter(Double::isFinite)
                .min()
                .orElse(0);
        double high = points.stream()
                .mapToDouble(p -> Math.max(0, p.y()))
                .filter(Double::isFinite)
                .max()
                .orElse(0);
        double room = 0.06 * Math.max(high - low, 0.1);
        return PlotAxis.of(label, low - room, high + room);
    }

    private static List<String> cautions(List<Outcome> outcomes) {
        List<String> cautions = new ArrayList<>();
        if (outcomes.stream().map(o -> o.reduced().measure()).distinct().count() > 1) {
            cautions.add("Different things are measured here; their changes do not compare.");
        }
        if (outcomes.stream().map(Outcome::aircraft).distinct().count() > 1) {
            cautions.add(
                    "Different aircraft: only the change in per cent and that of the lift coefficient compare, and only"
                            + " as far as flaps, power and centre of gravity were alike.");
        }
        if (outcomes.stream().map(o -> o.revision().slug()).distinct().count() > 1) {
            cautions.add(
                    "Different campaigns: no test here compares one campaign with another. Intervals that overlap do not"
                            + " show that two changes are equal.");
        }
        if (outcomes.stream().anyMatch(o -> o.reduced().calibration().curve() == null)) {
            cautions.add(
                    "Where airspeeds were not calibrated, speeds and lift coefficients are those of the indicator.");
        }
        return List.copyOf(cautions);
    }

    static String csv(List<Outcome> outcomes) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader(
                        "campaign",
                        "revision",
                        "sha256",
                        "aircraft",
                        "configuration",
                        "measure",
                        "unit",
                        "baseline_points",
                        "points",
                        "baseline_mean",
                        "change",
                        "change_low",
                        "change_high",
                        "p_value",
                        "change_percent",
                        "change_percent_low",
                        "change_percent_high",
                        "lift_coefficient_change",
                        "lift_coefficient_change_low",
                        "lift_coefficient_change_high")
                .get();
        StringBuilder out = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(out, format)) {
            for (Outcome o : outcomes) {
                printer.printRecord(cells(o));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private static List<String> cells(Outcome o) {
        Comparison c = o.conclusion().comparison();
        RelativeChange relative = o.relativeChange();
        Comparison lift = o.liftChange();
        return List.of(
                o.revision().slug(),
                String.valueOf(o.revision().number()),
                o.revision().sha256(),
                CsvCells.defuse(o.aircraft()),
                CsvCells.defuse(o.conclusion().configuration().label()),
                o.reduced().measure().name(),
                o.reduced().measure().unit(),
                String.valueOf(o.reduced().baseline().points().size()),
                String.valueOf(o.conclusion().configuration().points().size()),
                number(o.reduced().baseline().mean()),
                number(c == null ? null : (Double) c.difference()),
                number(c == null ? null : (Double) c.interval().low()),
                number(c == null ? null : (Double) c.interval().high()),
                number(c == null ? null : (Double) c.pValue()),
                number(relative == null ? null : (Double) (100 * relative.ratio())),
                number(
                        relative == null
                                ? null
                                : (Double) (100 * relative.interval().low())),
                number(
                        relative == null
                                ? null
                                : (Double) (100 * relative.interval().high())),
                number(lift == null ? null : (Double) lift.difference()),
                number(lift == null ? null : (Double) lift.interval().low()),
                number(lift == null ? null : (Double) lift.interval().high()));
    }

    private static String number(@Nullable Double value) {
        return value == null ? "" : String.format(Locale.ROOT, "%.4f", value);
    }
}
