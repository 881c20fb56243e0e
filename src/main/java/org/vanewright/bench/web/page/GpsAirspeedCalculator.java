package org.vanewright.bench.web.page;

import static org.vanewright.bench.web.page.Shown.fixed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.vanewright.bench.GpsAirspeedCalculation;
import org.vanewright.bench.GpsAirspeedRequest;
import org.vanewright.bench.GpsAirspeedResult;
import org.vanewright.engineering.flighttest.GpsAirspeed;
import org.vanewright.engineering.flighttest.GpsAirspeed.Directions;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.page.Units;

/** True airspeed from ground speeds on several legs. */
@Component
@Order(7)
class GpsAirspeedCalculator implements Calculator {
    private static final String KNOWN = "directions";
    private static final String LEGS = "legs";

    @Override
    public String name() {
        return "gps-airspeed";
    }

    @Override
    public String title() {
        return "Airspeed by GPS";
    }

    @Override
    public String about() {
        return "True airspeed and wind from GPS ground speeds on three or more straight legs, flown one after the other at the"
                + " same indicated airspeed and altitude. It is how an airspeed indicator is calibrated.";
    }

    @Override
    public List<Field> fields() {
        return List.of(
                Field.choice(
                        Field.Kind.RADIO,
                        KNOWN,
                        "Directions are",
                        Option.of(Directions.values(), GpsAirspeedCalculator::words)),
                Field.of(
                        Field.Kind.AREA,
                        LEGS,
                        "Legs",
                        "One a line: ground speed in kt, then the direction in ° true, such as 112 283."));
    }

    private static String words(Directions known) {
        return switch (known) {
            case TRACKS -> "Tracks, as the GPS shows them";
            case HEADINGS -> "Headings, by compass";
        };
    }

    @Override
    public Map<String, String> example() {
        return Map.of(KNOWN, Directions.TRACKS.name(), LEGS, "71 30\n48 150\n62 270\n73 345");
    }

    @Override
    public Answer answer(Form form, Units units) {
        Directions known = form.choice(KNOWN, Directions.class);
        if (known == null) {
            form.refuse(new FieldProblem(KNOWN, "missing", "tracks or headings"));
        }
        NumberLines lines = NumberLines.read(form, LEGS, 2, 2, "a ground speed and a direction");
        if (known == null || form.hasProblems()) {
            throw new InvalidInputException(form.problems());
        }
        GpsAirspeedRequest request = new GpsAirspeedRequest(legs(lines, known));
        GpsAirspeed found = lines.placed(LEGS, () -> GpsAirspeedCalculation.solve(request));
        GpsAirspeedResult result = GpsAirspeedCalculation.run(request);
        return new Answer(
                null,
                figures(found),
                null,
                List.of(),
                table(found, lines),
                result.method(),
                result.sources(),
                result.validity());
    }

    private static List<GpsAirspeedRequest.@Nullable Leg> legs(NumberLines lines, Directions known) {
        List<GpsAirspeedRequest.@Nullable Leg> legs = new ArrayList<>();
        for (NumberLines.Line line : lines.lines()) {
            Double direction = line.at(1);
            legs.add(new GpsAirspeedRequest.Leg(
                    line.at(0),
                    known == Directions.TRACKS ? direction : null,
                    known == Directions.TRACKS ? null : direction));
        }
        return legs;
    }

    private static List<Figure> figures(GpsAirspeed found) {
        List<Figure> figures = new ArrayList<>();
        figures.add(new Figure("True airspeed", fixed(found.trueAirspeedKt(), 1, "kt")));
        figures.add(new Figure(
                "Wind", fixed(found.windSpeedKt(), 1, "kt") + " from " + fixed(found.windFromDeg(), 0) + "°"));
        Double scatter = found.residualKt();
        Double uncertainty = found.standardUncertaintyKt();
        figures.add(new Figure(
                "Scatter of a leg",
                scatter == null ? "not known: a fourth leg would show it" : fixed(scatter, 1, "kt")));
        if (uncertainty != null) {
            figures.add(new Figure("Standard uncertainty of the airspeed", fixed(uncertainty, 2, "kt")));
        }
        return figures;
    }

    private static Table table(GpsAirspeed found, NumberLines lines) {
        boolean tracks = found.known() == Directions.TRACKS;
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < lines.lines().size(); i++) {
            NumberLines.Line line = lines.lines().get(i);
            rows.add(List.of(
                    String.valueOf(i + 1),
                    fixed(line.numbers().get(0), 1),
                    fixed(line.numbers().get(1), 0),
                    fixed(found.otherDirectionsDeg().get(i), 1),
                    fixed(found.residualsKt().get(i), 2)));
        }
        return new Table(
                "Legs, in kt and degrees true; the last column is what each misses the fit by",
                List.of(
                        "Leg",
                        "Ground speed",
                        tracks ? "Track" : "Heading",
                        tracks ? "Heading" : "Track",
                        tracks ? "Airspeed off by" : "Ground speed off by"),
                rows);
    }
}
