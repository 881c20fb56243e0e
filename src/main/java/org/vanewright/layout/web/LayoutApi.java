package org.vanewright.layout.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.layout.LayoutService;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordApi;

/** Layouts as JSON. */
@RestController
@RequestMapping("/api/v1/layouts")
@Tag(name = "Layouts", description = "Which device goes where, as immutable revisions.")
class LayoutApi extends RecordApi<LayoutDocument> {
    private final LayoutService layouts;
    private final LayoutPlanner planner;

    LayoutApi(LayoutService layouts, LayoutPlanner planner) {
        super(layouts);
        this.layouts = layouts;
        this.planner = planner;
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
}
