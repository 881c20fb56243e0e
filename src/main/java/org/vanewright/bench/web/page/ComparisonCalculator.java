package org.vanewright.bench.web.page;

import static org.vanewright.bench.web.page.Shown.digits;
import static org.vanewright.bench.web.page.Shown.fixed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.vanewright.bench.ComparisonCalculation;
import org.vanewright.bench.ComparisonRequest;
import org.vanewright.bench.ComparisonResult;
import org.vanewright.engineering.inference.Claim;
import org.vanewright.engineering.inference.Comparison;
import org.vanewright.engineering.inference.Sample;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Units;
import org.vanewright.platform.plot.Curve;
import org.vanewright.platform.plot.CurvePlot;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotPoint;

/** A modified configuration against the baseline. */
@Component
@Order(9)
class ComparisonCalculator implements Calculator {
    private static final String BASELINE = "baseline";
    private static final String MODIFIED = "modified";
    private static final int MOST_IN_A_LINE = 2_000;

    @Override
    public String name() {
        return "comparison";
    }

    @Override
    public String title() {
        return "Comparison";
    }

    @Override
    public String about() {
        return "Did it change anything? Repeated values of the unmodified aircraft against those of another configuration, such"
                + " as reduced stall speeds in kt: the difference with its interval, and what could have been missed.";
    }

    @Override
    public List<Field> fields() {
        return List.of(
                Field.of(
                        Field.Kind.AREA,
                        BASELINE,
                        "Baseline",
                        "Speeds in kt of the unmodified aircraft in the order flown, parted by blanks or lines."),
                Field.of(Field.Kind.AREA, MODIFIED, "Modified", "The same of the other configuration."),
                Field.number("confidence", "Confidence", "%", "Left empty, 95."));
    }

    @Override
    public Map<String, String> example() {
        return Map.of(
                BASELINE,
                "43.1 42.6 44.0 43.5 42.9 43.8 43.2 42.7",
                MODIFIED,
                "41.2 41.9 40.8 41.5 42.1 41.0 41.7 41.4",
                "confidence",
                "95");
    }

    @Override
    public Answer answer(Form form, Units units) {
        NumberLines baseline = NumberLines.read(form, BASELINE, 1, MOST_IN_A_LINE, "numbers parted by blanks");
        NumberLines modified = NumberLines.read(form, MODIFIED, 1, MOST_IN_A_LINE, "numbers parted by blanks");
        Double percent = form.number("confidence");
        form.refuse(problemsOf(percent));
        if (form.hasProblems()) {
            throw new InvalidInputException(form.problems());
        }
        ComparisonRequest request = new ComparisonRequest(
                baseline.all(), modified.all(), percent == null ? null : (Double) (percent / 100));
        Comparison c = ComparisonCalculation.compare(request);
        ComparisonResult result = ComparisonCalculation.run(request);
        Claim claim = Claim.of(c, "kt", "values");
        return new Answer(
                sentence(claim.words()),
                figures(c, claim),
                null,
                List.of(plot(baseline.all(), modified.all())),
                table(baseline.all(), modified.all()),
                result.method(),
                result.sources(),
                result.validity());
    }

    private static List<FieldProblem> problemsOf(@Nullable Double percent) {
        Checks checks = new Checks();
        checks.optionalRange("confidence", percent, 50, 99.99, "%");
        return checks.problems();
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }

    private static List<Figure> figures(Comparison c, Claim claim) {
        return List.of(
                new Figure("Numbers behind it", claim.basis()),
                new Figure("t", fixed(c.t(), 2)),
                new Figure("Degrees of freedom", fixed(c.degreesOfFreedom(), 1)),
                new Figure(
                        "Smallest change with a chance of 80 % to be seen",
                        digits(c.smallestVisibleChange(Comparison.USUAL_POWER), 2, "kt")));
    }

    private static DrawnPlot plot(List<@Nullable Double> baseline, List<@Nullable Double> modified) {
        return DrawnPlot.of(
                new CurvePlot(
                        "Values in the order flown",
                        PlotAxis.of("Place in the order"),
                        PlotAxis.of("Speed, kt"),
                        List.of(points(BASELINE, baseline), points(MODIFIED, modified)),
                        List.of()),
                "plot-values",
                "Each value by itself. A trend along the order is drift, and not the configuration.");
    }

    private static Curve points(String name, List<@Nullable Double> values) {
        List<PlotPoint> points = new ArrayList<>();
        for (Double value : values) {
            if (value != null) {
                points.add(new PlotPoint(points.size() + 1, value));
            }
        }
        return new Curve(name, points, Curve.Look.POINTS);
    }

    private static Table table(List<@Nullable Double> baseline, List<@Nullable Double> modified) {
        return new Table(
                "Means and standard deviations, in kt",
                List.of("Configuration", "Values", "Mean", "Standard deviation"),
                List.of(row("Baseline", baseline), row("Modified", modified)));
    }

    private static List<String> row(String name, List<@Nullable Double> values) {
        Sample sample = Sample.of(
                values.stream().mapToDouble(v -> v == null ? Double.NaN : v).toArray());
        return List.of(
                name, String.valueOf(sample.count()), fixed(sample.mean(), 2), fixed(sample.standardDeviation(), 2));
    }
}
