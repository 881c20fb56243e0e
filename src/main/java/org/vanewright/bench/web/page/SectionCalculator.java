package org.vanewright.bench.web.page;

import static org.vanewright.bench.web.page.Shown.fixed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.vanewright.bench.SectionCalculation;
import org.vanewright.bench.SectionRequest;
import org.vanewright.bench.SectionResult;
import org.vanewright.engineering.drawing.SvgWriter;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.wing.SectionDrawing;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Numbers;
import org.vanewright.platform.page.Units;

/** The shape of a section, and where things lie on its skin. */
@Component
@Order(1)
class SectionCalculator implements Calculator {
    private static final String STATIONS = "stationsPercent";

    /** The stations at which sections are commonly tabulated. */
    private static final String USUAL = "0 1.25 2.5 5 7.5 10 15 20 25 30 40 50 60 70 80 90 95 100";

    private static final double PERCENT = 100;

    @Override
    public String name() {
        return "section";
    }

    @Override
    public String title() {
        return "Section";
    }

    @Override
    public String about() {
        return "The outline of a wing section, with heights and distances along the skin from the leading edge, as a tape"
                + " measure laid on the wing reads them.";
    }

    @Override
    public List<Field> fields() {
        return Stream.concat(
                        SectionFields.all().stream(),
                        Stream.of(Field.of(
                                Field.Kind.TEXT,
                                STATIONS,
                                "Stations, in % of the chord",
                                "Numbers parted by blanks, such as 5 10 12.5. Left empty, the usual ones.")))
                .toList();
    }

    @Override
    public Map<String, String> example() {
        return Map.of(SectionFields.NACA, "4412", STATIONS, USUAL);
    }

    @Override
    public Answer answer(Form form, Units units) {
        SectionSpec spec = SectionFields.read(form);
        List<Double> percents = percents(form);
        if (spec == null) {
            throw new InvalidInputException(form.problems());
        }
        Section section = Sections.of(spec);
        SectionResult result = run(
                new SectionRequest(spec, percents.stream().map(p -> p / PERCENT).toList()), percents);
        List<Figure> figures = List.of(
                new Figure("Largest thickness", units.percent(result.maximumThickness()) + " of the chord"),
                new Figure(
                        "Largest camber",
                        result.maximumCamber() < 1e-6
                                ? "none, symmetric"
                                : units.percent(result.maximumCamber()) + " of the chord"),
                new Figure(
                        "Leading-edge radius", fixed(result.leadingEdgeRadius() * PERCENT, 2, "%") + " of the chord"));
        Answer.Picture picture = new Answer.Picture(
                SvgWriter.inline(SectionDrawing.of(section), "drawing section", "outline"),
                "Section " + section.designation() + ": chain line the chord, dashed line the mean line.");
        return new Answer(
                null,
                figures,
                picture,
                List.of(),
                table(result, percents),
                result.method(),
                result.sources(),
                result.validity());
    }

    /** The calculation takes fractions of the chord and numbers its stations; this page has percents in one line. */
    private static SectionResult run(SectionRequest request, List<Double> percents) {
        try {
            return SectionCalculation.run(request);
        } catch (InvalidInputException e) {
            throw new InvalidInputException(
                    e.problems().stream().map(p -> inPercent(p, percents)).toList());
        }
    }

    private static FieldProblem inPercent(FieldProblem p, List<Double> percents) {
        return p.field().startsWith("stations[")
                ? new FieldProblem(STATIONS, percents.toString(), "numbers from 0 to 100")
                : p.field().equals("stations") ? new FieldProblem(STATIONS, p.value(), p.allowed()) : p;
    }

    private static List<Double> percents(Form form) {
        String typed = form.text(STATIONS);
        List<Double> numbers = new ArrayList<>();
        for (String word : (typed == null ? USUAL : typed).split("[\\s;]+", -1)) {
            Optional<Double> number = Numbers.parse(word);
            if (number.isEmpty() && !word.isEmpty()) {
                form.refuse(new FieldProblem(STATIONS, word, "numbers parted by blanks, such as 5 10 12.5"));
            }
            number.ifPresent(numbers::add);
        }
        return numbers;
    }

    private static Table table(SectionResult result, List<Double> percents) {
        List<List<String>> rows = IntStream.range(0, percents.size())
                .mapToObj(i -> row(
                        percents.get(i), result.upper().get(i), result.lower().get(i)))
                .toList();
        return new Table(
                "Heights above the chord line and distances along the skin from the leading edge, all in % of the chord",
                List.of("Station", "Upper height", "Lower height", "Along the upper skin", "Along the lower skin"),
                rows);
    }

    private static List<String> row(double percent, SectionResult.Place upper, SectionResult.Place lower) {
        return List.of(
                Numbers.trimmed(percent, 3),
                fixed(upper.y() * PERCENT, 3),
                fixed(lower.y() * PERCENT, 3),
                fixed(upper.arcLength() * PERCENT, 3),
                fixed(lower.arcLength() * PERCENT, 3));
    }
}
