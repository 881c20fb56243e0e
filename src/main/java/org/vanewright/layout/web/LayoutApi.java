package org.vanewright.layout.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.enums.ParameterIn;
import io.swagger.v3.oas.annotations.media.Schema;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutGauges;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.layout.LayoutService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordApi;

/** Layouts as JSON. */
@RestController
@RequestMapping("/api/v1/layouts")
@Tag(name = "Layouts", description = "Which device goes where, as immutable revisions.")
class LayoutApi extends RecordApi<LayoutDocument> {
    private final LayoutService layouts;
    private final LayoutPlanner planner;
    private final LayoutGauges gauges;

    LayoutApi(LayoutService layouts, LayoutPlanner planner, LayoutGauges gauges) {
        super(layouts);
        this.layouts = layouts;
        this.planner = planner;
        this.gauges = gauges;
    }

    @Operation(summary = "The station table of the published revision")
    @GetMapping("/{slug}/stations")
    StationTable stations(@PathVariable("slug") String slug) {
        return StationTable.of(layouts.published(slug), planner);
    }

    @Operation(summary = "The station table of one exact revision")
    @GetMapping("/{slug}/revisions/{number}/stations")
    StationTable stations(@PathVariable("slug") String slug, @PathVariable("number") int number) {
        return StationTable.of(layouts.exactly(new RevisionRef(slug, number)), planner);
    }

    @Operation(summary = "The placing gauges that the rows need: each with its range, fit and slots")
    @Parameter(name = "revision", in = ParameterIn.QUERY, schema = @Schema(type = "integer"))
    @Parameter(name = "gapMm", in = ParameterIn.QUERY, schema = @Schema(type = "number"))
    @Parameter(name = "placeMm", in = ParameterIn.QUERY, schema = @Schema(type = "number"))
    @Parameter(name = "clearanceMm", in = ParameterIn.QUERY, schema = @Schema(type = "number"))
    @GetMapping("/{slug}/gauges")
    GaugeTable gauges(@PathVariable("slug") String slug, HttpServletRequest request) {
        GaugeQuery query = GaugeQuery.of(request);
        query.throwIfAny();
        Revision<LayoutDocument> layout = query.published(slug, layouts);
        return GaugeTable.of(layout, query.settings(), gauges.of(layout, query.settings()));
    }

    @Operation(summary = "How far each device may be from its place, and how that is known")
    @GetMapping("/{slug}/tolerances")
    ToleranceTable tolerances(
            @PathVariable("slug") String slug,
            @RequestParam(name = "revision", required = false) @Nullable Integer revision) {
        return ToleranceTable.of(
                revision == null ? layouts.published(slug) : layouts.exactly(new RevisionRef(slug, revision)), planner);
    }
}
