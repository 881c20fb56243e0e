package org.vanewright.study.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;
import org.vanewright.study.FlightState;
import org.vanewright.study.Study;
import org.vanewright.study.StudyService;

/** The placement study of a layout as JSON. */
@RestController
@Tag(name = "Placement studies", description = "A calculated figure is a starting point for tests, not an approval.")
class StudyApi {
    private final LayoutService layouts;
    private final StudyService studies;

    StudyApi(LayoutService layouts, StudyService studies) {
        this.layouts = layouts;
        this.studies = studies;
    }

    /**
     * A study.
     *
     * @param airframe exact revision
     * @param layout exact revision
     * @param state flight condition
     * @param surfaces each with its rows
     * @param method one paragraph
     * @param sources citations
     */
    record Body(
            RevisionRef airframe,
            RevisionRef layout,
            FlightState state,
            List<Study.Surface> surfaces,
            String method,
            List<String> sources) {}

    @GetMapping(path = "/api/v1/layouts/" + RecordPaths.SLUG + "/study", produces = MediaType.APPLICATION_JSON_VALUE)
    @Operation(
            summary = "Boundary layer, proportions and guidance at each row, at one flight condition",
            parameters = {
                @Parameter(name = "revision", description = "of the layout; the current one if absent"),
                @Parameter(
                        name = "massKg",
                        description = "from empty to maximum mass; the maximum if absent, where one is stated"),
                @Parameter(name = "pressureAltitudeFt"),
                @Parameter(name = "outsideAirTemperatureC"),
                @Parameter(
                        name = "condition",
                        description = "STALL, APPROACH, CRUISE or SPEED; the slowest that is stated if absent"),
                @Parameter(name = "calibratedAirspeedKt", description = "with SPEED"),
                @Parameter(name = "row", description = "index of the row that the next five change; 0 if absent"),
                @Parameter(name = "chordFraction"),
                @Parameter(name = "heightMm"),
                @Parameter(name = "lengthMm"),
                @Parameter(name = "angleDeg"),
                @Parameter(name = "pitchMm")
            })
    Body study(@PathVariable("slug") String slug, @Parameter(hidden = true) HttpServletRequest request) {
        StudyForm asked = StudyForm.of(request);
        if (asked.form().hasProblems()) {
            throw new InvalidInputException(asked.form().problems());
        }
        RevisionRef ref = asked.ref(slug);
        Revision<LayoutDocument> layout = ref == null ? layouts.published(slug) : layouts.exactly(ref);
        Study study = studies.of(layout, asked.query());
        return new Body(
                study.airframe().ref(), layout.ref(), study.state(), study.surfaces(), Study.METHOD, Study.SOURCES);
    }
}
