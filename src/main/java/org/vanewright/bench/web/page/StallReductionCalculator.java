package org.vanewright.bench.web.page;

import static org.vanewright.bench.web.page.Shown.fixed;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.vanewright.bench.StallReductionCalculation;
import org.vanewright.bench.StallReductionRequest;
import org.vanewright.bench.StallReductionResult;
import org.vanewright.engineering.flighttest.StallBudget;
import org.vanewright.engineering.flighttest.StallPoint;
import org.vanewright.engineering.flighttest.StallReduction;
import org.vanewright.engineering.flighttest.UncertaintyBudget;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Units;

/** Stalls at the standard mass, with their uncertainty. */
@Component
@Order(8)
class StallReductionCalculator implements Calculator {
    private static final String POINTS = "points";
    private static final String MASS = "standardMassKg";
    private static final String AREA = "wingAreaM2";
    private static final String[] UNCERTAINTIES = {"resolutionKt", "calibrationKt", "massKg", "loadFactor"};

    @Override
    public String name() {
        return "stall-reduction";
    }

    @Override
    public String title() {
        return "Stalls";
    }

    @Override
    public String about() {
        return "Repeated stalls at the standard mass, a load factor of 1 and an entry rate of 1 kt/s, with what the result owes"
                + " its uncertainty to. One good stall proves nothing. Fly stalls only as the aircraft's operating limitations"
                + " and your licence allow, with height to recover and nobody aboard who need not be.";
    }

    @Override
    public List<Field> fields() {
        return List.of(
                Field.number(MASS, "Standard mass", "kg", null),
                Field.number(AREA, "Wing area", "m²", "For lift coefficients; left empty, there are none."),
                Field.of(
                        Field.Kind.AREA,
                        POINTS,
                        "Stalls",
                        "One a line: calibrated airspeed in kt and mass in kg, then, where known, load factor and entry rate"
                                + " in kt/s, such as 41.8 486 1 1.1."),
                Field.number(
                        UNCERTAINTIES[0],
                        "Resolution of the airspeed indicator",
                        "kt",
                        "The smallest step you can read."),
                Field.number(UNCERTAINTIES[1], "Standard uncertainty of the calibration", "kt", null),
                Field.number(UNCERTAINTIES[2], "Standard uncertainty of the mass", "kg", null),
                Field.number(
                        UNCERTAINTIES[3],
                        "Standard uncertainty of the load factor",
                        null,
                        "Fields of uncertainty that are left empty count as 0."));
    }

    @Override
    public Map<String, String> example() {
        return Map.of(
                MASS,
                "500",
                AREA,
                "12.4",
                POINTS,
                "42.5 488 1 0.6\n41.8 486 1 1.1\n41.1 484 1 1.6\n42.0 482 1 0.9\n41.6 480 1 1.2\n42.3 478 1 0.7",
                UNCERTAINTIES[0],
                "1",
                UNCERTAINTIES[1],
                "0.6",
                UNCERTAINTIES[2],
                "5",
                UNCERTAINTIES[3],
                "0.02");
    }

    @Override
    public Answer answer(Form form, Units units) {
        NumberLines lines =
                NumberLines.read(form, POINTS, 2, 4, "airspeed, mass and, where known, load factor and entry rate");
        StallReductionRequest request = new StallReductionRequest(form.number(MASS), form.number(AREA), points(lines));
        StallBudget inputs = new StallBudget(
                orZero(form, UNCERTAINTIES[0]),
                orZero(form, UNCERTAINTIES[1]),
                orZero(form, UNCERTAINTIES[2]),
                orZero(form, UNCERTAINTIES[3]));
        if (form.hasProblems()) {
            throw new InvalidInputException(form.problems());
        }
        StallReductionResult result = lines.placed(POINTS, () -> StallReductionCalculation.run(request));
        List<StallPoint> points = StallReductionCalculation.points(request);
        StallReduction reduction =
                StallReduction.of(points, Objects.requireNonNull(request.standardMassKg()), request.wingAreaM2());
        return new Answer(
                null,
                figures(reduction, inputs.of(points, reduction)),
                null,
                List.of(),
                table(result, points),
                result.method()
                        + " Uncertainties are combined as squares; a reading is a rectangle as wide as the resolution; only"
                        + " scatter shrinks with repeats.",
                sources(result),
                result.validity());
    }

    private static List<String> sources(StallReductionResult result) {
        List<String> sources = new ArrayList<>(result.sources());
        sources.add("JCGM 100:2008, Guide to the Expression of Uncertainty in Measurement, 4.3.7, 5.1.2, G.4");
        return sources;
    }

    private static double orZero(Form form, String path) {
        Double number = form.number(path);
        return number == null ? 0 : number;
    }

    private static List<StallReductionRequest.@Nullable Point> points(NumberLines lines) {
        List<StallReductionRequest.@Nullable Point> points = new ArrayList<>();
        lines.lines().forEach(l -> points.add(new StallReductionRequest.Point(l.at(0), l.at(1), l.at(2), l.at(3))));
        return points;
    }

    private static List<Figure> figures(StallReduction reduction, UncertaintyBudget budget) {
        List<Figure> figures = new ArrayList<>();
        Interval interval = budget.interval(0.95);
        figures.add(new Figure(
                "Stall speed at 1 kt/s",
                fixed(reduction.atOneKnotPerSecondKt(), 1, "kt calibrated") + ", 95 % interval "
                        + fixed(interval.low(), 1) + " to " + fixed(interval.high(), 1, "kt")));
        figures.add(new Figure("Mean of the stalls", fixed(reduction.meanKt(), 1, "kt")));
        Double deviation = reduction.standardDeviationKt();
        figures.add(new Figure(
                "Standard deviation of a stall",
                deviation == null ? "not known from one stall" : fixed(deviation, 2, "kt")));
        Double slope = reduction.entryRateSlope();
        figures.add(new Figure(
                "Change with entry rate",
                slope == null ? "not claimed: rates do not vary enough" : fixed(slope, 2, "kt per kt/s")));
        budget.contributions()
                .forEach(c -> figures.add(new Figure(
                        "Uncertainty: " + c.name().toLowerCase(Locale.ROOT),
                        fixed(c.standardUncertainty(), 2, "kt") + ", " + fixed(100 * budget.share(c), 0, "%")
                                + " of the variance")));
        figures.add(new Figure("Combined standard uncertainty", fixed(budget.combined(), 2, "kt")));
        return figures;
    }

    private static Table table(StallReductionResult result, List<StallPoint> points) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            StallPoint point = points.get(i);
            StallReductionResult.Point reduced = result.points().get(i);
            Double rate = point.entryRateKtPerS();
            Double lift = reduced.liftCoefficient();
            rows.add(List.of(
                    String.valueOf(i + 1),
                    fixed(point.calibratedAirspeedKt(), 1),
                    fixed(point.massKg(), 1),
                    fixed(point.loadFactor(), 2),
                    rate == null ? "–" : fixed(rate, 2),
                    fixed(reduced.standardAirspeedKt(), 2),
                    lift == null ? "–" : fixed(lift, 2)));
        }
        return new Table(
                "Stalls as flown and at the standard mass, in kt, kg and kt/s",
                List.of(
                        "Stall",
                        "Calibrated",
                        "Mass",
                        "Load factor",
                        "Entry rate",
                        "Standard airspeed",
                        "Lift coefficient"),
                rows);
    }
}
