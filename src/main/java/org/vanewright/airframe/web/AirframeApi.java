package org.vanewright.airframe.web;

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
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.Contributors;
import org.vanewright.record.web.RevisionBody;
import org.vanewright.record.web.RevisionResponses;
import org.vanewright.record.web.RevisionSummary;
import org.vanewright.record.web.Verification;

/** Airframes as JSON. */
@RestController
@RequestMapping("/api/v1/airframes")
class AirframeApi {
    private static final String PLURAL = "airframes";

    private final AirframeService airframes;

    AirframeApi(AirframeService airframes) {
        this.airframes = airframes;
    }

    @GetMapping
    RevisionSummary.Page list(
            @RequestParam(name = "cursor", required = false) @Nullable String cursor,
            @RequestParam(name = "limit", defaultValue = "50") int limit) {
        return RevisionSummary.Page.of(airframes.list(cursor, limit));
    }

    @PostMapping
    ResponseEntity<RevisionBody<AirframeDocument>> create(@RequestBody AirframeDocument airframe) {
        return RevisionResponses.created(PLURAL, airframes.create(airframe, Contributors.OPEN_EDITING, null));
    }

    @GetMapping("/{slug}")
    ResponseEntity<RevisionBody<AirframeDocument>> latest(@PathVariable("slug") String slug) {
        return RevisionResponses.ok(airframes.published(slug));
    }

    @GetMapping("/{slug}/revisions")
    List<RevisionSummary> history(@PathVariable("slug") String slug) {
        airframes.published(slug);
        return airframes.history(slug).stream().map(RevisionSummary::of).toList();
    }

    /** The next revision; {@code If-Match} names the one it changes by its entity tag. */
    @PostMapping("/{slug}/revisions")
    ResponseEntity<RevisionBody<AirframeDocument>> revise(
            @PathVariable("slug") String slug,
            @RequestHeader(name = "If-Match", required = false) @Nullable String ifMatch,
            @RequestBody AirframeDocument airframe) {
        Revision<AirframeDocument> current = airframes.published(slug);
        if (ifMatch == null) {
            throw new ResponseStatusException(
                    HttpStatus.PRECONDITION_REQUIRED, "If-Match must name the entity tag of the revision you change.");
        }
        if (!RevisionResponses.matches(ifMatch, current)) {
            throw new ResponseStatusException(
                    HttpStatus.PRECONDITION_FAILED, "Revision " + current.number() + " is published by now.");
        }
        return RevisionResponses.created(PLURAL, airframes.revise(current.ref(), airframe, Contributors.OPEN_EDITING));
    }

    @GetMapping("/{slug}/revisions/{number}")
    ResponseEntity<RevisionBody<AirframeDocument>> revision(
            @PathVariable("slug") String slug, @PathVariable("number") int number) {
        return RevisionResponses.ok(airframes.exactly(new RevisionRef(slug, number)));
    }

    @GetMapping("/{slug}/revisions/{number}/verify")
    Verification verify(@PathVariable("slug") String slug, @PathVariable("number") int number) {
        Revision<AirframeDocument> revision = airframes.exactly(new RevisionRef(slug, number));
        return Verification.of(revision, airframes.verify(revision));
    }
}
