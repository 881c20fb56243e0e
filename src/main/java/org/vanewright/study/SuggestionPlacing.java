package org.vanewright.study;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.placement.PlacementNote;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutPlanner;

/** Puts a suggested row into its layout, as the layout's own rows are: keep-outs, joints and ends are heeded. */
@Component
class SuggestionPlacing {
    private final LayoutPlanner planner;

    SuggestionPlacing(LayoutPlanner planner) {
        this.planner = planner;
    }

    static Optional<RowTrial> trial(LayoutPlan plan, LayoutPlan.SurfacePlan surface, int index) {
        TemplateRow row = surface.rows().stream()
                .filter(r -> r.plan().index() == index)
                .findFirst()
                .orElseThrow();
        return RowTrials.of(plan, surface, row);
    }

    /** Absent where the layout cannot be made with it, or no device of it finds a place. */
    Optional<Suggestion> placed(
            Suggester.Judged judged, LayoutDocument layout, int index, Suggester.Condition fastest) {
        LayoutPlan plan;
        try {
            plan = planner.plan(judged.row().in(layout, index));
        } catch (InvalidInputException e) {
            return Optional.empty();
        }
        LayoutPlan.SurfacePlan surface = plan.surfaces().stream()
                .filter(s -> s.rows().stream().anyMatch(r -> r.plan().index() == index))
                .findFirst()
                .orElseThrow();
        return trial(plan, surface, index).map(found -> {
            RowTrial trial = judged.trial().withVanes(found.vanes());
            return new Suggestion(
                    judged.row(), trial, judged.score(), judged.found(), fitted(trial, surface, index, fastest));
        });
    }

    private static Suggestion.Fitted fitted(
            RowTrial trial, LayoutPlan.SurfacePlan surface, int index, Suggester.Condition fastest) {
        RowStudy study = fastest.studies().of(trial, fastest.flow());
        List<PlacementNote> notes = surface.placement().notes().stream()
                .filter(n -> n.row() == index)
                .toList();
        int leftOut = (int) notes.stream().filter(n -> n.movedToMm() == null).count();
        int devices = surface.placement().on(Wing.LEFT, index).size()
                + surface.placement().on(Wing.RIGHT, index).size();
        return new Suggestion.Fitted(
                devices,
                notes.size() - leftOut,
                leftOut,
                notes.stream().map(PlacementNote::reason).distinct().toList(),
                study.loadAtVne(),
                study.drag());
    }
}
