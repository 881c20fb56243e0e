package org.vanewright.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.record.Revision;

/** Looks at the rows of a layout, or at what is tried in their place, at one flight condition. */
@Service
public class StudyService {
    private static final int STATIONS = 40;

    private final LayoutPlanner planner;
    private final Guidance guidance;

    StudyService(LayoutPlanner planner, Guidance guidance) {
        this.planner = planner;
        this.guidance = guidance;
    }

    /**
     * @throws InvalidInputException naming a field of the query
     */
    public Study of(Revision<LayoutDocument> layout, StudyQuery query) {
        check(query.trial());
        LayoutPlan plan = planner.plan(layout.content());
        AirframeDocument airframe = plan.airframe().content();
        FlightState state = FlightState.of(airframe, query);
        Double vne = airframe.speeds() == null ? null : airframe.speeds().vneKt();
        List<Study.Surface> surfaces = plan.surfaces().stream()
                .map(surface -> surface(plan, surface, state, vne, query))
                .toList();
        return new Study(plan.airframe(), state, surfaces);
    }

    private static void check(StudyQuery.Trial trial) {
        Checks checks = new Checks();
        checks.optionalRange("chordFraction", trial.chordFraction(), 0.005, 0.9, "");
        checks.optionalRange("heightMm", trial.heightMm(), 1, 60, "mm");
        checks.optionalRange("lengthMm", trial.lengthMm(), 2, 200, "mm");
        checks.optionalRange("angleDeg", trial.angleDeg(), 0, 45, "°");
        checks.optionalRange("pitchMm", trial.pitchMm(), 5, 1000, "mm");
        checks.throwIfAny();
    }

    private Study.Surface surface(
            LayoutPlan plan,
            LayoutPlan.SurfacePlan surface,
            FlightState state,
            @Nullable Double vneKt,
            StudyQuery query) {
        WingFlow wing = new WingFlow(
                surface.shape(), state, WeightShares.of(plan.airframe().content(), surface.name()));
        RowStudies studies = new RowStudies(wing, state, vneKt, guidance.all());
        int tried = query.row() == null ? 0 : query.row();
        List<RowStudy> rows = new ArrayList<>();
        for (TemplateRow row : surface.rows()) {
            Optional<RowTrial> found = RowTrials.of(plan, surface, row);
            found.map(r -> r.index() == tried ? r.tried(query.trial()) : r)
                    .ifPresent(r -> rows.add(studies.of(r, studies.at(r.stationMm()))));
        }
        return new Study.Surface(
                surface.name(),
                wing.areaM2(),
                wing.aspectRatio(),
                wing.liftCoefficient(),
                wing.liftAlongTheSpan(STATIONS).stream()
                        .map(p -> new Study.SpanLift(p[0], p[1]))
                        .toList(),
                List.copyOf(rows));
    }
}
