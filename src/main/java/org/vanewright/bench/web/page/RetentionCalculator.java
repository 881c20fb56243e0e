package org.vanewright.bench.web.page;

import static org.vanewright.bench.web.page.Shown.digits;
import static org.vanewright.bench.web.page.Shown.fixed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.vanewright.bench.RetentionCalculation;
import org.vanewright.bench.RetentionRequest;
import org.vanewright.bench.RetentionResult;
import org.vanewright.engineering.inference.survival.Binomial;
import org.vanewright.engineering.inference.survival.KaplanMeier;
import org.vanewright.engineering.inference.survival.Lifetime;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Units;
import org.vanewright.platform.plot.Curve;
import org.vanewright.platform.plot.CurvePlot;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotPoint;
import org.vanewright.platform.plot.Steps;

/** How long devices stay on, from hours alone. */
@Component
@Order(12)
class RetentionCalculator implements Calculator {
    private static final String GROUPS = "groups";
    private static final String CONFIDENCE = "confidence";
    private static final double CLEAR = 0.05;

    @Override
    public String name() {
        return "retention";
    }

    @Override
    public String title() {
        return "Staying on";
    }

    @Override
    public String about() {
        return "How long devices stay on when not all of them have come off yet: the share left over hours flown, its limits,"
                + " and whether groups differ. Every flight begins with a look at every device, whatever a curve says.";
    }

    @Override
    public List<Field> fields() {
        return List.of(
                Field.of(
                        Field.Kind.AREA,
                        GROUPS,
                        "Groups",
                        "One a line: a name, a colon, then the hours flown at which each device was lost, or last seen in"
                                + " place with a plus behind, such as Foam: 12.5 31 50+ 50+."),
                Field.number(CONFIDENCE, "Confidence", "%", "Left empty, 95."));
    }

    @Override
    public Map<String, String> example() {
        return Map.of(
                GROUPS,
                "Foam tape: 12.5 31 44 50+ 50+ 50+ 50+ 50+\nFilm tape: 6 8.5 14 22 30+ 30+ 30+ 30+",
                CONFIDENCE,
                "95");
    }

    @Override
    public Answer answer(Form form, Units units) {
        List<RetentionRequest.@Nullable Group> groups = RetentionLines.read(form, GROUPS);
        Double percent = form.number(CONFIDENCE);
        Checks checks = new Checks();
        checks.optionalRange(CONFIDENCE, percent, 50, 99.99, "%");
        form.refuse(checks.problems());
        if (form.hasProblems()) {
            throw new InvalidInputException(form.problems());
        }
        RetentionRequest request = new RetentionRequest(groups, percent == null ? null : (Double) (percent / 100));
        RetentionResult result = RetentionCalculation.run(request);
        List<RetentionCalculation.Observed> observed = RetentionCalculation.groups(request);
        return new Answer(
                said(result),
                figures(result, observed, RetentionCalculation.confidence(request)),
                null,
                List.of(plot(result, observed)),
                table(result),
                result.method(),
                result.sources(),
                result.validity());
    }

    private static @Nullable String said(RetentionResult result) {
        RetentionResult.LogRankTest test = result.logRank();
        if (test == null) {
            return null;
        }
        return test.pValue() < CLEAR
                ? "The groups lose at different rates, if each device has a fate of its own."
                : "No difference between the groups is shown; that does not show that there is none.";
    }

    private static List<Figure> figures(
            RetentionResult result, List<RetentionCalculation.Observed> observed, double confidence) {
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < observed.size(); i++) {
            RetentionResult.Group group = result.groups().get(i);
            int count = observed.get(i).lifetimes().size();
            long lost =
                    observed.get(i).lifetimes().stream().filter(Lifetime::lost).count();
            Double median = group.medianHours();
            figures.add(new Figure(group.name() + ": lost", lost + " of " + count));
            figures.add(new Figure(
                    group.name() + ": half are left until",
                    median == null
                            ? "not reached"
                            : digits(median, 3, "h") + medianLimits(observed.get(i), confidence)));
            if (lost == 0) {
                figures.add(new Figure(
                        group.name() + ": lost at most",
                        fixed(100 * Binomial.upperLimitOfNone(count, confidence), 1, "%") + " (rule of three at 95 %: "
                                + fixed(100 * Binomial.ruleOfThree(count), 1, "%") + ")"));
            }
        }
        RetentionResult.LogRankTest test = result.logRank();
        if (test != null) {
            figures.add(new Figure(
                    "Log-rank test",
                    "χ² " + fixed(test.chiSquared(), 2) + ", " + test.degreesOfFreedom() + " df, p "
                            + digits(test.pValue(), 2)));
        }
        return figures;
    }

    private static String medianLimits(RetentionCalculation.Observed group, double confidence) {
        KaplanMeier.MedianInterval limits =
                KaplanMeier.of(group.lifetimes(), confidence).medianInterval();
        return " (from " + (limits.low() == null ? "–" : digits(limits.low(), 3)) + " to "
                + (limits.high() == null ? "no known limit" : digits(limits.high(), 3)) + ")";
    }

    private static DrawnPlot plot(RetentionResult result, List<RetentionCalculation.Observed> observed) {
        List<Curve> curves = new ArrayList<>();
        boolean limits = result.groups().size() <= 2;
        for (int i = 0; i < result.groups().size() && curves.size() < CurvePlot.MOST_CURVES; i++) {
            RetentionResult.Group group = result.groups().get(i);
            double end = observed.get(i).lifetimes().stream()
                    .mapToDouble(Lifetime::hours)
                    .max()
                    .orElse(0);
            curves.add(curve(group, group.name(), Curve.Look.LINE, end, RetentionResult.Step::survival));
            if (limits && !group.curve().isEmpty()) {
                curves.add(curve(
                        group, group.name() + ", lower limit", Curve.Look.DOTTED, end, RetentionResult.Step::low));
                curves.add(curve(
                        group, group.name() + ", upper limit", Curve.Look.DOTTED, end, RetentionResult.Step::high));
            }
        }
        return DrawnPlot.of(
                new CurvePlot(
                        "Share still in place over hours flown",
                        PlotAxis.of("Hours flown"),
                        PlotAxis.of("Share in place", 0, 1.02),
                        curves,
                        List.of()),
                "plot-retention",
                "Each curve ends where the last device was seen. Limits hold at each time by itself.");
    }

    private static Curve curve(
            RetentionResult.Group group,
            String name,
            Curve.Look look,
            double end,
            ToDoubleFunction<RetentionResult.Step> value) {
        List<PlotPoint> changes = group.curve().stream()
                .map(s -> new PlotPoint(s.hours(), value.applyAsDouble(s)))
                .toList();
        return new Curve(name, Steps.of(new PlotPoint(0, 1), changes, end), look);
    }

    private static Table table(RetentionResult result) {
        List<List<String>> rows = new ArrayList<>();
        for (RetentionResult.Group group : result.groups()) {
            for (RetentionResult.Step step : group.curve()) {
                rows.add(List.of(
                        group.name(),
                        digits(step.hours(), 4),
                        String.valueOf(step.atRisk()),
                        String.valueOf(step.lost()),
                        fixed(step.survival(), 3),
                        fixed(step.standardError(), 3),
                        fixed(step.low(), 3),
                        fixed(step.high(), 3)));
            }
        }
        return new Table(
                "Every time of losses, hours flown",
                List.of(
                        "Group",
                        "Hours",
                        "At risk",
                        "Lost",
                        "In place",
                        "Standard error",
                        "Lower limit",
                        "Upper limit"),
                rows);
    }
}
