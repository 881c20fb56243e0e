package org.vanewright.study;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.springframework.stereotype.Service;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceService;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.vane.GuidanceCheck;
import org.vanewright.engineering.vane.Recommendation;
import org.vanewright.engineering.vane.VaneProportions;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.layout.RowDocument;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/**
 * Tries published devices at every chord position, pitch and angle of a grid in place of a layout's row, at each flight
 * condition whose speed the airframe states, and ranks them by how well they meet the chosen recommendations. The best
 * are placed, so that keep-outs, joints and ends are heeded.
 */
@Service
public class Suggester {
    /** How many are shown. */
    public static final int MOST = 8;

    /** How many of one device, and how far apart along the chord. */
    public static final int MOST_OF_ONE = 3;

    public static final double APART = 0.02;

    /** How many devices are known to the page and tried. */
    public static final int MOST_DEVICES = 100;

    private static final int KEPT = 100;

    private final LayoutPlanner planner;
    private final SuggestionPlacing placing;
    private final DeviceService devices;
    private final Guidance guidance;
    private final KeptFlows flows;
    private final Cache<Key, List<Suggestion>> kept =
            Caffeine.newBuilder().maximumSize(KEPT).build();

    Suggester(
            LayoutPlanner planner,
            SuggestionPlacing placing,
            DeviceService devices,
            Guidance guidance,
            KeptFlows flows) {
        this.planner = planner;
        this.placing = placing;
        this.devices = devices;
        this.guidance = guidance;
        this.flows = flows;
    }

    private record Key(String layout, List<RevisionRef> devices, SuggestionQuery query) {}

    /** One flight condition with the section's flow there. */
    record Condition(StudyCondition name, RowStudies studies, StationFlow flow) {}

    /** A candidate with what came of it at each condition. */
    record Judged(SuggestedRow row, RowTrial trial, double score, List<Suggestion.AtCondition> found) {}

    /** Those that can be tried. */
    public List<Revision<DeviceDocument>> devices() {
        return devices.list(null, MOST_DEVICES).items();
    }

    /**
     * The best of each device, best first; at most {@value #MOST}. Placed before anything that is kept is given away, so
     * that nobody is shown what they may not see; only published devices are tried.
     *
     * @throws InvalidInputException naming a field of the query
     */
    public List<Suggestion> of(Revision<LayoutDocument> layout, SuggestionQuery query) {
        query.check();
        LayoutPlan plan = planner.plan(layout.content());
        List<Revision<DeviceDocument>> tried = devices();
        List<RevisionRef> names = tried.stream().map(Revision::ref).toList();
        return kept.get(
                new Key(layout.contentKey(), names, query), k -> computed(layout.content(), plan, tried, query));
    }

    private List<Suggestion> computed(
            LayoutDocument layout, LayoutPlan plan, List<Revision<DeviceDocument>> tried, SuggestionQuery query) {
        LayoutPlan.SurfacePlan surface = surface(plan, query);
        RowTrial base = SuggestionPlacing.trial(plan, surface, query.row())
                .orElseThrow(() -> new InvalidInputException(
                        new FieldProblem("row", String.valueOf(query.row()), "a row of which a device found a place")));
        List<Condition> conditions = conditions(plan, surface, query, base.stationMm());
        List<Recommendation> chosen = guidance.all().stream()
                .filter(r -> query.recommendations().isEmpty()
                        || query.recommendations().contains(r.id()))
                .toList();
        RowDocument row = layout.rows().get(query.row());
        List<Judged> judged = Candidates.of(tried, query).stream()
                .map(c -> judged(c, c.trial(base, row), conditions, chosen))
                .sorted(Comparator.comparingDouble(Judged::score)
                        .reversed()
                        .thenComparingDouble(j -> j.row().chordFraction())
                        .thenComparing(j -> j.row().device().slug()))
                .toList();
        return best(judged, layout, query.row(), conditions);
    }

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
        AirframeDocument.Speeds speeds = airframe.speeds();
        KeptFlows.Wing wing = flows.wing(plan.airframe(), surface.name(), surface.shape());
        List<Condition> conditions = new ArrayList<>();
        for (StudyCondition name : SuggestionQuery.CONDITIONS) {
            if (name.statedKt(speeds) != null) {
                FlightState state = FlightState.of(airframe, query.at(name));
                RowStudies studies = new RowStudies(state, speeds == null ? null : speeds.vneKt(), List.of());
                conditions.add(new Condition(name, studies, wing.station(state, stationMm)));
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

    private static Judged judged(
            SuggestedRow row, RowTrial trial, List<Condition> conditions, List<Recommendation> chosen) {
        List<Suggestion.AtCondition> found = conditions.stream()
                .map(c -> {
                    VaneProportions proportions = c.studies().proportions(trial, c.flow());
                    return new Suggestion.AtCondition(
                            c.name(), proportions, GuidanceCheck.of(chosen, proportions, trial.pairs()));
                })
                .toList();
        double score = found.stream()
                .mapToDouble(Suggestion.AtCondition::score)
                .average()
                .orElse(0);
        return new Judged(row, trial, score, found);
    }

    private List<Suggestion> best(List<Judged> judged, LayoutDocument layout, int index, List<Condition> conditions) {
        List<Suggestion> best = new ArrayList<>();
        for (Judged each : judged) {
            if (best.size() < MOST && isAnother(each.row(), best)) {
                placing.placed(each, layout, index, conditions.get(conditions.size() - 1))
                        .ifPresent(best::add);
            }
        }
        return List.copyOf(best);
    }

    private static boolean isAnother(SuggestedRow row, List<Suggestion> best) {
        List<SuggestedRow> alike = best.stream()
                .map(Suggestion::row)
                .filter(r -> r.device().ref().equals(row.device().ref()))
                .toList();
        return alike.size() < MOST_OF_ONE
                && alike.stream().allMatch(r -> Math.abs(r.chordFraction() - row.chordFraction()) > APART - 1e-9);
    }
}
