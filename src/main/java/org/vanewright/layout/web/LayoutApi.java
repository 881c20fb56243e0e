package org.vanewright.layout.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.springframework.web.server.ResponseStatusException;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.layout.LayoutService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.Contributors;
import org.vanewright.record.web.RevisionBody;
import org.vanewright.record.web.RevisionResponses;
import org.vanewright.record.web.RevisionSummary;
import org.vanewright.record.web.Verification;

/** Layouts as JSON. */
@RestController
@RequestMapping("/api/v1/layouts")
class LayoutApi {
    private static final String PLURAL = "layouts";

    private final LayoutService layouts;
    private final LayoutPlanner planner;

    LayoutApi(LayoutService layouts, LayoutPlanner planner) {
        this.layouts = layouts;
        this.planner = planner;
    }

    @GetMapping
    RevisionSummary.Page list(
            @RequestParam(name = "cursor", required = false) @Nullable String cursor,
            @RequestParam(name = "limit", defaultValue = "50") int limit) {
        return RevisionSummary.Page.of(layouts.list(cursor, limit));
    }

    @PostMapping
    ResponseEntity<RevisionBody<LayoutDocument>> create(@RequestBody LayoutDocument layout) {
        return RevisionResponses.created(PLURAL, layouts.create(layout, Contributors.OPEN_EDITING, null));
    }

    @GetMapping("/{slug}")
    ResponseEntity<RevisionBody<LayoutDocument>> latest(@PathVariable("slug") String slug) {
        return RevisionResponses.ok(layouts.published(slug));
    }

    @GetMapping("/{slug}/revisions")
    List<RevisionSummary> history(@PathVariable("slug") String slug) {
        layouts.published(slug);
        return layouts.history(slug).stream().map(RevisionSummary::of).toList();
    }

    /** The next revision; {@code If-Match} names the one it changes by its entity tag. */
    @PostMapping("/{slug}/revisions")
    ResponseEntity<RevisionBody<LayoutDocument>> revise(
            @PathVariable("slug") String slug,
            @RequestHeader(name = "If-Match", required = false) @Nullable String ifMatch,
            @RequestBody LayoutDocument layout) {
        Revision<LayoutDocument> current = layouts.published(slug);
        if (ifMatch == null) {
            throw new ResponseStatusException(
                    HttpStatus.PRECONDITION_REQUIRED, "If-Match must name the entity tag of the revision you change.");
        }
        if (!RevisionResponses.matches(ifMatch, current)) {
            throw new ResponseStatusException(
                    HttpStatus.PRECONDITION_FAILED, "Revision " + current.number() + " is published by now.");
        }
        return RevisionResponses.created(PLURAL, layouts.revise(current.ref(), layout, Contributors.OPEN_EDITING));
    }

    @GetMapping("/{slug}/revisions/{number}")
    ResponseEntity<RevisionBody<LayoutDocument>> revision(
            @PathVariable("slug") String slug, @PathVariable("number") int number) {
        return RevisionResponses.ok(layouts.exactly(new RevisionRef(slug, number)));
    }

    @GetMapping("/{slug}/revisions/{number}/verify")
    Verification verify(@PathVariable("slug") String slug, @PathVariable("number") int number) {
        Revision<LayoutDocument> revision = layouts.exactly(new RevisionRef(slug, number));
        return Verification.of(revision, layouts.verify(revision));
    }

    /** The station table of the published revision. */
    @GetMapping("/{slug}/stations")
    StationTable stations(@PathVariable("slug") String slug) {
        return StationTable.of(layouts.published(slug), planner);
    }

    /** The station table of one exact revision. */
    @GetMapping("/{slug}/revisions/{number}/stations")
    StationTable stations(@PathVariable("slug") String slug, @PathVariable("number") int number) {
        return StationTable.of(layouts.exactly(new RevisionRef(slug, number)), planner);
    }
}
