package org.vanewright.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Service;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.solid.DeviceDesign.Planform;
import org.vanewright.engineering.solid.VaneSide;
import org.vanewright.engineering.template.TemplateRow;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;
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
    private final KeptFlows flows;

    StudyService(LayoutPlanner planner, Guidance guidance, KeptFlows flows) {
        this.planner = planner;
        this.guidance = guidance;
        this.flows = flows;
    }

    /**
     * Placed anew each time, so that nobody is shown an airframe or device that they may not see; the flows are kept.
     *
     * @throws InvalidInputException naming a field of the query
     */
    public Study of(Revision<LayoutDocument> layout, StudyQuery query) {
        check(query.trial());
        LayoutPlan plan = planner.plan(layout.content());
        FlightState state = FlightState.of(plan.airframe().content(), query);
        List<Study.Surface> surfaces = plan.surfaces().stream()
                .map(surface -> surface(plan, surface, state, query))
                .toList();
        return new Study(plan.airframe(), state, surfaces);
    }

    /**
     * Every row of a layout in proportion to the flow at one flight condition, and nothing else of the study.
     *
     * @throws InvalidInputException where the aircraft states too little for the condition
     */
    public List<RowProportion> proportions(Revision<LayoutDocument> layout, StudyQuery query) {
        LayoutPlan plan = planner.plan(layout.content());
        FlightState state = FlightState.of(plan.airframe().content(), query);
        RowStudies studies = new RowStudies(state, null, List.of());
        List<RowProportion> all = new ArrayList<>();
        for (LayoutPlan.SurfacePlan surface : plan.surfaces()) {
            KeptFlows.Wing wing = flows.wing(plan.airframe(), surface.name(), surface.shape());
            for (TemplateRow planned : surface.rows()) {
                RowTrials.of(plan, surface, planned)
                        .map(row -> new RowProportion(
                                row.name(),
                                row.surface(),
                                row.side(),
                                row.chordFraction(),
                                row.vane().heightMm(),
                                row.vanes(),
                                studies.proportions(row, wing.station(state, row.stationMm()))))
                        .ifPresent(all::add);
            }
        }
        return List.copyOf(all);
    }

    private Study.Surface surface(
            LayoutPlan plan, LayoutPlan.SurfacePlan surface, FlightState state, StudyQuery query) {
        int tried = query.row() == null ? 0 : query.row();
        List<RowTrial> rows = new ArrayList<>();
        for (TemplateRow row : surface.rows()) {
            RowTrials.of(plan, surface, row)
                    .map(r -> r.index() == tried ? r.tried(query.trial()) : r)
                    .ifPresent(rows::add);
        }
        KeptFlows.Wing wing = flows.wing(plan.airframe(), surface.name(), surface.shape());
        List<Place> places = rows.stream().map(RowTrial::place).toList();
        return surface(plan.airframe(), surface.name(), wing, state, rows, places);
    }

    private Study.Surface surface(
            Revision<AirframeDocument> airframe,
            String name,
            KeptFlows.Wing wing,
            FlightState state,
            List<RowTrial> rows,
            List<Place> places) {
        AirframeDocument.Speeds speeds = airframe.content().speeds();
        RowStudies studies = new RowStudies(state, speeds == null ? null : speeds.vneKt(), guidance.all());
        WingLift lift = wing.lift(state);
        return new Study.Surface(
                name,
                lift.areaM2(),
                lift.aspectRatio(),
                lift.coefficient(),
                lift.alongTheSpan(STATIONS),
                rows.stream()
                        .map(r -> studies.of(r, wing.station(state, r.stationMm())))
                        .toList(),
                SpeedSweep.of(wing, state, speeds, places));
    }

    /**
     * One place of a wing without a layout.
     *
     * @throws InvalidInputException naming a field of the query
     */
    public PlaceStudy at(Revision<AirframeDocument> airframe, PlaceQuery query) {
        StudyQuery.Trial trial = query.flight().trial();
        check(trial);
        FlightState state = FlightState.of(airframe.content(), query.flight());
        SurfaceDocument surface = surface(airframe.content(), query);
        WingShape shape = LayoutPlanner.shape(surface);
        double station = stationMm(shape, query);
        double fraction = trial.chordFraction() == null ? PlaceQuery.USUAL_FRACTION : trial.chordFraction();
        Place place = new Place(0, "Here", station, query.side(), fraction, trial.heightMm());
        KeptFlows.Wing wing = flows.wing(airframe, surface.label(), shape);
        List<RowTrial> rows = device(place, surface.label(), trial);
        StationFlow here = wing.station(state, station);
        return new PlaceStudy(
                airframe,
                state,
                surface(airframe, surface.label(), wing, state, rows, List.of(place)),
                here,
                place,
                LayerHere.of(here.side(place.side()), fraction, here.chordMm()),
                StationFlows.warnings(here));
    }

    private static SurfaceDocument surface(AirframeDocument airframe, PlaceQuery query) {
        List<SurfaceDocument> surfaces = airframe.surfaces();
        Checks checks = new Checks();
        boolean known = query.surface() < surfaces.size();
        checks.require(
                known && query.panel() < surfaces.get(query.surface()).panels().size(),
                "part",
                query.surface() + "." + query.panel(),
                "a surface and panel of the airframe");
        checks.throwIfAny();
        return surfaces.get(query.surface());
    }

    private static double stationMm(WingShape shape, PlaceQuery query) {
        Double given = query.stationMm();
        if (given == null) {
            WingPanel panel = shape.panels().get(query.panel());
            return (panel.innerStationMm() + panel.outerStationMm()) / 2;
        }
        Checks checks = new Checks();
        checks.require(
                given >= shape.innerStationMm() && given <= shape.outerStationMm(),
                "stationMm",
                given,
                String.format(
                        Locale.ROOT,
                        "%.0f to %.0f mm on this surface",
                        shape.innerStationMm(),
                        shape.outerStationMm()));
        checks.throwIfAny();
        return given;
    }

    /** A rectangular vane of that height; what else is not said is as people usually make it. */
    private static List<RowTrial> device(Place place, String surface, StudyQuery.Trial trial) {
        Double height = place.heightMm();
        if (height == null) {
            return List.of();
        }
        double length = trial.lengthMm() == null ? PlaceQuery.USUAL_LENGTH * height : trial.lengthMm();
        return List.of(new RowTrial(
                place.index(),
                place.name(),
                surface,
                place.side(),
                place.stationMm(),
                place.chordFraction(),
                new VaneSide(Planform.RECTANGULAR, height, length, length),
                trial.angleDeg() == null ? PlaceQuery.USUAL_ANGLE_DEG : trial.angleDeg(),
                trial.pitchMm() == null ? PlaceQuery.USUAL_PITCH * height : trial.pitchMm(),
                null,
                1));
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
}
