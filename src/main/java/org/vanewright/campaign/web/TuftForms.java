package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.Recording;
import org.vanewright.campaign.TuftFramesDocument;
import org.vanewright.campaign.TuftGridDocument;
import org.vanewright.campaign.TuftRules;
import org.vanewright.campaign.TuftSurveyDocument;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.tuft.TuftState;
import org.vanewright.engineering.tuft.TuftSurvey;
import org.vanewright.engineering.tuft.Wings;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Numbers;
import org.vanewright.platform.page.Quantity;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.record.photograph.PhotographRules;

/** Forms that make a grid of tufts and take what was seen of it. */
final class TuftForms {
    static final String STATIONS = "stationsMm";
    static final String CHORDS = "chordPercent";
    private static final String SHOWN = "shown";

    private TuftForms() {}

    /** A grid to start from. */
    static Form blankGrid(UnitSystem units) {
        return new Form(units)
                .put("surface", "")
                .put("side", SurfaceSide.UPPER)
                .put("wings", Wings.BOTH)
                .put(STATIONS, "")
                .put(CHORDS, "30 50 70 90");
    }

    /** The grid as typed; what cannot be read is noted in the form. */
    static TuftGridDocument readGrid(Form form) {
        return new TuftGridDocument(
                Recording.newId(),
                form.text("surface"),
                form.choice("side", SurfaceSide.class),
                form.choice("wings", Wings.class),
                numbers(form, STATIONS, n -> Quantity.LENGTH.stored(n, form.units())),
                numbers(form, CHORDS, n -> n / 100),
                List.of());
    }

    private static List<Double> numbers(Form form, String path, UnaryOperator<Double> stored) {
        String typed = form.text(path);
        List<Double> numbers = new ArrayList<>();
        if (typed != null) {
            for (String each : typed.split("[;\\s]+", TuftRules.MAX_STATIONS + 2)) {
                Optional<Double> number = Numbers.parse(each.replaceAll(",$", ""));
                if (number.isEmpty()) {
                    form.refuse(new FieldProblem(path, typed, "numbers with blanks between them"));
                    return List.of();
                }
                numbers.add(stored.apply(number.get()));
            }
        }
        return numbers;
    }

    /** Notes the problems of a grid at the fields of its form. */
    static void refuseGrid(Form form, List<FieldProblem> problems) {
        for (FieldProblem problem : problems) {
            String field = problem.field().replaceAll("\\[\\d+]$", "");
            boolean chords = field.equals("chordFractions");
            form.refuse(
                    chords
                            ? new FieldProblem(
                                    CHORDS,
                                    form.value(CHORDS),
                                    "1 to " + TuftRules.MAX_ROWS + " increasing numbers from 0 to 100")
                            : new FieldProblem(field, problem.value(), problem.allowed()));
        }
    }

    /** The field that says what the tuft of that number did. */
    static String field(TuftGridDocument grid, int tuft) {
        int rows = grid.chordFractions().size();
        int perSide = rows * grid.stationsMm().size();
        boolean left = grid.wings() == Wings.LEFT || tuft >= perSide;
        int within = tuft % perSide;
        return (left ? "left[" : "right[") + within / rows + "].row[" + within % rows + "]";
    }

    /** A survey to start from: nothing seen yet, at the condition of the one before. */
    static Form blankSurvey(
            UnitSystem units, TuftGridDocument grid, String firstKey, @Nullable TuftSurveyDocument before) {
        Form form = new Form(units)
                .put("id", Recording.newId())
                .put("configuration", before == null ? firstKey : before.configuration());
        putStates(form, grid, String.valueOf(TuftState.NOT_SEEN.code()).repeat(grid.size()));
        return form;
    }

    static Form of(TuftSurveyDocument survey, TuftGridDocument grid, UnitSystem units) {
        Form form = new Form(units)
                .put("id", survey.id())
                .put("configuration", survey.configuration())
                .put("indicatedAirspeedKt", survey.indicatedAirspeedKt())
                .put("flaps", survey.flaps())
                .put("power", survey.power())
                .put("at", survey.at())
                .put("remark", survey.remark());
        putStates(form, grid, shownStates(survey));
        for (int i = 0; i < survey.photographs().size(); i++) {
            form.put(SHOWN + "[" + i + "]", survey.photographs().get(i));
        }
        return form;
    }

    /** What was proposed from still frames stands in the form until somebody has gone through it. */
    private static String shownStates(TuftSurveyDocument survey) {
        TuftFramesDocument frames = survey.frames();
        String states = frames != null && survey.unconfirmed() ? frames.proposed() : survey.states();
        return states == null ? "" : states;
    }

    private static void putStates(Form form, TuftGridDocument grid, String states) {
        for (int i = 0; i < grid.size(); i++) {
            char state = i < states.length() ? states.charAt(i) : TuftState.NOT_SEEN.code();
            form.put(field(grid, i), String.valueOf(state));
        }
    }

    /** Says of every tuft that nothing is said of yet that it is steady. */
    static void restSteady(Form form, TuftGridDocument grid) {
        for (int i = 0; i < grid.size(); i++) {
            if (state(form, field(grid, i)) == TuftState.NOT_SEEN) {
                form.put(field(grid, i), String.valueOf(TuftState.STEADY.code()));
            }
        }
    }

    /** The states as typed; a tuft that the form leaves out was not seen. */
    static List<TuftState> states(Form form, TuftGridDocument grid) {
        return IntStream.range(0, grid.size())
                .mapToObj(i -> state(form, field(grid, i)))
                .toList();
    }

    private static TuftState state(Form form, String field) {
        String typed = form.value(field);
        Optional<TuftState> state =
                typed.length() > 1 ? Optional.empty() : TuftState.of(typed.isEmpty() ? '-' : typed.charAt(0));
        if (state.isEmpty()) {
            form.refuse(new FieldProblem(field, "another state", "S, U, R or -"));
        }
        return state.orElse(TuftState.NOT_SEEN);
    }

    /** The survey as typed; what cannot be read is noted in the form. */
    static TuftSurveyDocument readSurvey(Form form, TuftGridDocument grid) {
        String id = form.text("id");
        return new TuftSurveyDocument(
                id == null ? Recording.newId() : id,
                form.text("configuration"),
                form.number("indicatedAirspeedKt"),
                form.text("flaps"),
                form.text("power"),
                form.text("at"),
                TuftSurvey.letters(states(form, grid)),
                shown(form).stream().sorted().collect(Collectors.toList()),
                form.text("remark"),
                null);
    }

    /** Photographs of the campaign that are ticked. */
    static List<String> shown(Form form) {
        return IntStream.range(0, PhotographRules.MOST)
                .mapToObj(i -> form.value(SHOWN + "[" + i + "]"))
                .filter(hash -> !hash.isEmpty())
                .distinct()
                .toList();
    }
}
