package org.vanewright.bench.web.page;

import static org.vanewright.bench.web.page.Shown.fixed;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.vanewright.bench.SampleSizeCalculation;
import org.vanewright.bench.SampleSizeRequest;
import org.vanewright.engineering.inference.SampleSize;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.page.Units;
import org.vanewright.platform.plot.Curve;
import org.vanewright.platform.plot.CurvePlot;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotMark;
import org.vanewright.platform.plot.PlotPoint;

/** How many repeats show a change. */
@Component
@Order(10)
class SampleSizeCalculator implements Calculator {
    private static final String DESIGN = "design";
    private static final int CURVE_POINTS = 60;

    /** What a person can plan. */
    private enum Plan {
        GROUPS,
        PAIRS
    }

    @Override
    public String name() {
        return "sample-size";
    }

    @Override
    public String title() {
        return "How many repeats";
    }

    @Override
    public String about() {
        return "How often each configuration must be flown to show a change, from a guess of the scatter. Ask before the first"
                + " flight, and again with the scatter of the baseline.";
    }

    @Override
    public List<Field> fields() {
        return List.of(
                Field.choice(Field.Kind.RADIO, DESIGN, "Flown", Option.of(Plan.values(), SampleSizeCalculator::words)),
                Field.number(
                        "standardDeviation",
                        "Standard deviation",
                        "kt",
                        "Of single values; in pairs, of the differences within a pair."),
                Field.number("difference", "Change worth finding", "kt", null),
                Field.number("significance", "Chance of a false alarm", "%", "Left empty, 5, to either side."),
                Field.number("power", "Chance to see the change", "%", "Left empty, 80."));
    }

    private static String words(Plan plan) {
        return switch (plan) {
            case GROUPS -> "Each value by itself";
            case PAIRS -> "In pairs, one of each configuration in a flight";
        };
    }

    @Override
    public Map<String, String> example() {
        return Map.of(
                DESIGN,
                Plan.GROUPS.name(),
                "standardDeviation",
                "1.2",
                "difference",
                "1.5",
                "significance",
                "5",
                "power",
                "80");
    }

    @Override
    public Answer answer(Form form, Units units) {
        Plan plan = form.choice(DESIGN, Plan.class);
        Checks checks = new Checks();
        checks.present(DESIGN, plan, "each by itself or in pairs");
        Double significance = form.number("significance");
        Double power = form.number("power");
        checks.optionalRange("significance", significance, 0.0001, 50, "%");
        checks.optionalRange("power", power, 1, 99.9999, "%");
        checks.require(
                power == null || power > (significance == null ? 5 : significance),
                "power",
                power,
                "more than the chance of a false alarm");
        form.refuse(checks.problems());
        if (form.hasProblems()) {
            throw new InvalidInputException(form.problems());
        }
        SampleSize size = SampleSizeCalculation.size(
                new SampleSizeRequest(
                        form.number("standardDeviation"),
                        form.number("difference"),
                        fraction(significance),
                        fraction(power)),
                plan == Plan.PAIRS);
        if (form.hasProblems()) {
            throw new InvalidInputException(form.problems());
        }
        return new Answer(
                null,
                figures(size, plan == Plan.PAIRS),
                null,
                List.of(plot(size)),
                null,
                SampleSizeCalculation.METHOD
                        + (plan == Plan.PAIRS
                                ? " In pairs there are n − 1 degrees of freedom, and n is half of that."
                                : ""),
                SampleSizeCalculation.SOURCES,
                SampleSizeCalculation.validity(size));
    }

    private static @Nullable Double fraction(@Nullable Double percent) {
        return percent == null ? null : (Double) (percent / 100);
    }

    private static List<Figure> figures(SampleSize size, boolean pairs) {
        return List.of(
                new Figure(pairs ? "Pairs" : "Values of each configuration", String.valueOf(size.perGroup())),
                new Figure("Chance to see the change with as many", percent(size.powerAt(size.perGroup()))),
                new Figure("By the normal distribution", fixed(size.normalApproximation(), 1)));
    }

    private static String percent(double fraction) {
        return fixed(100 * fraction, 1, "%");
    }

    private static DrawnPlot plot(SampleSize size) {
        List<PlotPoint> points = size.curve(CURVE_POINTS).stream()
                .map(p -> new PlotPoint(p.perGroup(), 100 * p.power()))
                .toList();
        return DrawnPlot.of(
                new CurvePlot(
                        "Chance to see the change over repeats",
                        PlotAxis.of("Values of each configuration"),
                        PlotAxis.of("Chance to see the change, %", 0, 100),
                        List.of(new Curve("chance", points, Curve.Look.LINE)),
                        List.of(new PlotMark(String.valueOf(size.perGroup()), size.perGroup(), null))),
                "plot-power",
                "How the chance to see the change grows with the number of values of each configuration.");
    }
}
