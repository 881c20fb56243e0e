package org.vanewright.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.springframework.stereotype.Service;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceService;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.engineering.vane.GuidanceCheck;
import org.vanewright.engineering.vane.Recommendation;
import org.vanewright.engineering.vane.VaneProportions;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.record.Revision;

/**
 * Tries every published device at every chord position, pitch and angle of a grid in place of a layout's row, at each
 * flight condition whose speed the airframe states, and ranks them by how well they meet the chosen recommendations.
 */
@Service
public class Suggester {
    /** How many are shown. */
    public static final int MOST = 8;

    private static final int MOST_DEVICES = 100;
    private static final double STEP = 0.01;
    private static final double[] PITCHES_IN_HEIGHTS = {5, 6, 8, 10, 12, 15};
    private static final double[] ANGLES_DEG = {10, 12, 15, 18, 20};
    private static final double PITCH_GRID_MM = 5;

    private final LayoutPlanner planner;
    private final DeviceService devices;
    private final Guidance guidance;

    Suggester(LayoutPlanner planner, DeviceService devices, Guidance guidance) {
        this.planner = planner;
        this.devices = devices;
        this.guidance = guidance;
    }

    /**
     * The best of each device and chord position, best first; at most {@value #MOST}.
     *
     * @throws InvalidInputException naming a field of the query
     */
    public List<Suggestion> of(Revision<LayoutDocument> layout, SuggestionQuery query) {
        query.check();
        LayoutPlan plan = planner.plan(layout.content());
        LayoutPlan.SurfacePlan surface = surface(plan, query);
        TemplateRow row = surface.rows().stream()
                .filter(r -> r.plan().index() == query.row())
                .findFirst()
                .orElseThrow();
        RowTrial base = RowTrials.of(plan, surface, row)
                .orElseThrow(() -> new InvalidInputException(
                        new FieldProblem("row", String.valueOf(query.row()), "a row of which a device found a place")));
        List<Condition> conditions = conditions(plan, surface, query, base.stationMm());
        List<Recommendation> chosen = guidance.all().stream()
                .filter(r -> query.recommendations().isEmpty()
                        || query.recommendations().contains(r.id()))
                .toList();
        return best(candidates(base, query).stream()
                .map(c -> judged(c, conditions, chosen))
                .toList());
    }

    /** One flight condition with the section's flow there. */
    private record Condition(StudyCondition name, RowStudies studies, RowStudies.StationFlow flow) {}

    private record Candidate(Revision<DeviceDocument> device, RowTrial row) {}

    private static LayoutPlan.SurfacePlan surface(LayoutPlan plan, SuggestionQuery query) {
        return plan.surfaces().stream()
                .filter(s -> s.rows().stream().anyMatch(r -> r.plan().index() == query.row()))
                .findFirst()
                .orElseThrow(() -> new InvalidInputException(
                        new FieldProblem("row", String.valueOf(query.row()), "a row of the layout, counted from 0")));
    }

    private List<Condition> conditions(
            LayoutPlan plan, LayoutPlan.SurfacePlan surface, SuggestionQuery query, double stationMm) {
        AirframeDocument airframe = plan.airframe().content();
        List<Condition> conditions = new ArrayList<>();
        for (StudyCondition name : SuggestionQuery.CONDITIONS) {
            if (name.statedKt(airframe.speeds()) != null) {
                FlightState state = FlightState.of(airframe, query.at(name));
                WingFlow wing = new WingFlow(surface.shape(), state, WeightShares.of(airframe, surface.name()));
                RowStudies studies = new RowStudies(wing, state, null, List.of());
                conditions.add(new Condition(name, studies, studies.at(stationMm)));
            }
        }
        Checks checks = new Checks();
        checks.require(
                !conditions.isEmpty(),
                "row",
                query.row(),
                "on an airframe that states a stall, approach or cruise speed");
        checks.throwIfAny();
        return conditions;
    }

    /** Single vanes only; a pair on one base has its own angle and gap, which this grid does not vary. */
    private List<Candidate> candidates(RowTrial base, SuggestionQuery query) {
        List<Candidate> candidates = new ArrayList<>();
        for (Revision<DeviceDocument> device : devices.list(null, MOST_DEVICES).items()) {
            DeviceDocument content = device.content();
            if (content.pair() == null && content.vane() != null) {
                VaneSide vane = VaneSide.of(Objects.requireNonNull(content.vane()));
                for (double x = query.leastFraction(); x <= query.mostFraction() + 1e-9; x += STEP) {
                    proportions(base, vane, Math.round(x * 1000) / 1000.0)
                            .forEach(row -> candidates.add(new Candidate(device, row)));
                }
            }
        }
        return candidates;
    }

    private static List<RowTrial> proportions(RowTrial base, VaneSide vane, double chordFraction) {
        List<RowTrial> rows = new ArrayList<>();
        for (double heights : PITCHES_IN_HEIGHTS) {
            double pitch =
                    Math.max(PITCH_GRID_MM, Math.round(heights * vane.heightMm() / PITCH_GRID_MM) * PITCH_GRID_MM);
            for (double angle : ANGLES_DEG) {
                rows.add(new RowTrial(
                        base.index(),
                        base.name(),
                        base.surface(),
                        base.side(),
                        base.stationMm(),
                        chordFraction,
                        vane,
                        angle,
                        pitch,
                        base.gapMm(),
                        base.vanes()));
            }
        }
        return rows;
    }

    private static Suggestion judged(Candidate candidate, List<Condition> conditions, List<Recommendation> chosen) {
        RowTrial row = candidate.row();
        List<Suggestion.AtCondition> found = conditions.stream()
                .map(c -> {
                    VaneProportions proportions = c.studies().proportions(row, c.flow());
                    return new Suggestion.AtCondition(
                            c.name(), proportions, GuidanceCheck.of(chosen, proportions, row.pairs()));
                })
                .toList();
        double score = found.stream()
                .mapToDouble(Suggestion.AtCondition::score)
                .average()
                .orElse(0);
        return new Suggestion(
                candidate.device().ref(),
                candidate.device().content().name(),
                row.chordFraction(),
                row.pitchMm(),
                row.angleDeg(),
                score,
                found);
    }

    private static List<Suggestion> best(List<Suggestion> all) {
        List<Suggestion> best = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        all.stream()
                .sorted(Comparator.comparingDouble(Suggestion::score)
                        .reversed()
                        .thenComparingDouble(Suggestion::chordFraction)
                        .thenComparing(s -> s.device().slug()))
                .forEach(s -> {
                    if (best.size() < MOST && seen.add(s.device() + " " + s.chordFraction())) {
                        best.add(s);
                    }
                });
        return List.copyOf(best);
    }
}
