package org.vanewright.campaign;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.airframe.Surfaces;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.tuft.TuftSurvey;
import org.vanewright.engineering.tuft.Wings;
import org.vanewright.record.photograph.PhotographUse;

/** What must hold of grids of tufts and of what was seen of them. */
public final class TuftRules {
    public static final int MAX_GRIDS = 4;
    public static final int MAX_STATIONS = 20;
    public static final int MAX_ROWS = 12;
    public static final int MAX_SURVEYS = 30;

    private TuftRules() {}

    /** Every problem of a campaign's tufts, under {@code tufts}. */
    static void check(CampaignDocument campaign, Checks checks) {
        List<TuftGridDocument> grids = campaign.tufts();
        checks.require(grids.size() <= MAX_GRIDS, "tufts", grids.size(), "at most " + MAX_GRIDS + " grids");
        Set<String> gridIds = new HashSet<>();
        Set<String> surveyIds = new HashSet<>();
        for (int i = 0; i < Math.min(grids.size(), MAX_GRIDS); i++) {
            TuftGridDocument grid = grids.get(i);
            String at = "tufts[" + i + "]";
            checks.addUnder(at, grid(grid));
            unique(at, grid.id(), gridIds, checks);
            List<TuftSurveyDocument> surveys = grid.surveys();
            for (int j = 0; j < Math.min(surveys.size(), MAX_SURVEYS); j++) {
                String survey = at + ".surveys[" + j + "]";
                checks.addUnder(survey, survey(surveys.get(j), grid, campaign));
                unique(survey, surveys.get(j).id(), surveyIds, checks);
            }
        }
    }

    private static void unique(String at, @Nullable String id, Set<String> known, Checks checks) {
        checks.require(id == null || known.add(id), at + ".id", id, "an id that nothing else here has");
    }

    /** Problems of a grid itself, with the fields named as they stand in it. */
    public static List<FieldProblem> grid(TuftGridDocument grid) {
        Checks checks = new Checks();
        id(grid.id(), checks);
        checks.text("surface", grid.surface(), 120);
        checks.present("side", grid.side(), "UPPER or LOWER");
        checks.present("wings", grid.wings(), "RIGHT, LEFT or BOTH");
        increasing("stationsMm", grid.stationsMm(), MAX_STATIONS, 60_000, "mm", checks);
        increasing("chordFractions", grid.chordFractions(), MAX_ROWS, 1, "of the chord", checks);
        int surveys = grid.surveys().size();
        checks.require(surveys <= MAX_SURVEYS, "surveys", surveys, "at most " + MAX_SURVEYS + " surveys of one grid");
        return checks.problems();
    }

    private static void id(@Nullable String id, Checks checks) {
        checks.require(id != null && id.matches("[A-Za-z0-9-]{1,40}"), "id", id, "1 to 40 letters, digits or hyphens");
    }

    private static void increasing(
            String field, List<Double> values, int most, double high, String unit, Checks checks) {
        if (!checks.require(
                !values.isEmpty() && values.size() <= most, field, values.size(), "1 to " + most + " numbers")) {
            return;
        }
        for (int i = 0; i < values.size(); i++) {
            boolean inside = checks.range(field + "[" + i + "]", values.get(i), 0, high, unit);
            checks.require(
                    !inside || i == 0 || values.get(i) > values.get(i - 1),
                    field + "[" + i + "]",
                    values.get(i),
                    "more than the one before");
        }
    }

    /** Problems of a survey, with the fields named as they stand in it. */
    public static List<FieldProblem> survey(
            TuftSurveyDocument survey, TuftGridDocument grid, CampaignDocument campaign) {
        Checks checks = new Checks();
        id(survey.id(), checks);
        checks.require(
                campaign.plan().configuration(survey.configuration()).isPresent(),
                "configuration",
                survey.configuration(),
                "the key of one of the configurations: "
                        + String.join(", ", campaign.plan().keys()));
        checks.range("indicatedAirspeedKt", survey.indicatedAirspeedKt(), 5, 350, "kt");
        checks.optionalText("flaps", survey.flaps(), 80);
        checks.optionalText("power", survey.power(), 80);
        String at = survey.at();
        checks.require(at == null || PointRules.isInstant(at), "at", at, "a time such as 2026-05-02T09:14:00Z");
        checks.optionalText("remark", survey.remark(), 1000);
        states(survey.states(), grid.size(), checks);
        photographs(survey.photographs(), campaign.photographs(), checks);
        if (survey.frames() != null) {
            checks.addUnder("frames", TuftFrameRules.check(survey.frames(), grid.size()));
        }
        return checks.problems();
    }

    private static void states(@Nullable String states, int tufts, Checks checks) {
        String allowed = "one of the letters S, U, R and - for each of the grid's " + tufts + " tufts";
        if (!checks.require(
                states != null && states.length() == tufts,
                "states",
                states == null ? null : states.length() + " letters",
                allowed)) {
            return;
        }
        try {
            TuftSurvey.read(Objects.requireNonNull(states));
        } catch (InvalidInputException e) {
            e.problems().forEach(checks::add);
        }
    }

    private static void photographs(List<String> named, List<PhotographUse> kept, Checks checks) {
        Set<String> hashes = kept.stream()
                .flatMap(use -> Stream.ofNullable(use.sha256()))
                .collect(Collectors.toCollection(HashSet::new));
        for (int i = 0; i < named.size(); i++) {
            checks.require(
                    hashes.remove(named.get(i)),
                    "photographs[" + i + "]",
                    named.get(i),
                    "a photograph of this campaign, only once");
        }
    }

    /** Problems of a grid on its aircraft, with the fields named as they stand in the grid. */
    public static List<FieldProblem> onAircraft(TuftGridDocument grid, AirframeDocument airframe) {
        Checks checks = new Checks();
        String name = grid.surface() == null ? "" : grid.surface();
        Optional<SurfaceDocument> surface = Surfaces.named(airframe, name);
        if (!checks.require(surface.isPresent(), "surface", name, "a surface of " + airframe.name())) {
            return checks.problems();
        }
        boolean mirrored = surface.get().kind() == null || surface.get().kind().mirrored();
        checks.require(
                mirrored || grid.wings() == Wings.RIGHT, "wings", grid.wings(), "RIGHT for a fin, which stands alone");
        List<Double> ends = Surfaces.stationsMm(surface.get());
        double root = ends.get(0);
        double tip = ends.get(ends.size() - 1);
        for (int i = 0; i < grid.stationsMm().size(); i++) {
            checks.range("stationsMm[" + i + "]", grid.stationsMm().get(i), root, tip, "mm");
        }
        return checks.problems();
    }
}
