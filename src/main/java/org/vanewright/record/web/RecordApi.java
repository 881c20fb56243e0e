package org.vanewright.record.web;

import io.swagger.v3.oas.annotations.Operation;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** One kind of record as JSON. A feature extends it and says at which address. */
public abstract class RecordApi<T extends RecordContent> {
    private final String plural;
    private final RecordService<T> records;

    /** @param plural the last part of the address, such as {@code airframes} */
    protected RecordApi(String plural, RecordService<T> records) {
        this.plural = plural;
        this.records = records;
    }

    /** Published records; {@code cursor} comes from the page before. */
    @Operation(summary = "What is published, newest first, by cursor")
    @GetMapping
    public RevisionSummary.Page list(
            @RequestParam(name = "cursor", required = false) @Nullable String cursor,
            @RequestParam(name = "limit", defaultValue = "50") int limit) {
        return RevisionSummary.Page.of(records.list(cursor, limit));
    }

    /** A new record. */
    @Operation(summary = "Publish a new record")
    @PostMapping
    public ResponseEntity<RevisionBody<T>> create(@RequestBody T content) {
        return RevisionResponses.created(plural, records.create(content, Contributors.OPEN_EDITING, null));
    }

    /** The published revision. */
    @Operation(summary = "The published revision")
    @GetMapping("/{slug}")
    public ResponseEntity<RevisionBody<T>> latest(@PathVariable("slug") String slug) {
        return RevisionResponses.ok(records.published(slug));
    }

    /** Every revision of a published record. */
    @Operation(summary = "Every revision, newest first")
    @GetMapping("/{slug}/revisions")
    public List<RevisionSummary> history(@PathVariable("slug") String slug) {
        records.published(slug);
        return records.history(slug).stream().map(RevisionSummary::of).toList();
    }

    /** The next revision; {@code If-Match} names the one it changes by its entity tag. */
    @Operation(summary = "Publish the next revision; If-Match names the one it changes")
    @PostMapping("/{slug}/revisions")
    public ResponseEntity<RevisionBody<T>> revise(
            @PathVariable("slug") String slug,
            @RequestHeader(name = "If-Match", required = false) @Nullable String ifMatch,
            @RequestBody T content) {
        Revision<T> current = records.published(slug);
        if (ifMatch == null) {
            throw new ResponseStatusException(
                    HttpStatus.PRECONDITION_REQUIRED, "If-Match must name the entity tag of the revision you change.");
        }
        if (!RevisionResponses.matches(ifMatch, current)) {
            throw new ResponseStatusException(
                    HttpStatus.PRECONDITION_FAILED, "Revision " + current.number() + " is published by now.");
        }
        return RevisionResponses.created(plural, records.revise(current.ref(), content, Contributors.OPEN_EDITING));
    }

    /** One exact revision, whatever its state. */
    @Operation(summary = "One exact revision")
    @GetMapping("/{slug}/revisions/{number}")
    public ResponseEntity<RevisionBody<T>> revision(
            @PathVariable("slug") String slug, @PathVariable("number") int number) {
        return RevisionResponses.ok(records.exactly(new RevisionRef(slug, number)));
    }

    /** Whether a revision still has its hash. */
    @Operation(summary = "Compute the hash of a revision again")
    @GetMapping("/{slug}/revisions/{number}/verify")
    public Verification verify(@PathVariable("slug") String slug, @PathVariable("number") int number) {
        Revision<T> revision = records.exactly(new RevisionRef(slug, number));
        return Verification.of(revision, records.verify(revision));
    }
}
