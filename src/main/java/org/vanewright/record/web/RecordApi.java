package org.vanewright.record.web;

import io.swagger.v3.oas.annotations.Operation;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** One kind of record as JSON. A feature extends it and says at which address. */
public abstract class RecordApi<T extends RecordContent> {
    private final RecordService<T> records;

    protected RecordApi(RecordService<T> records) {
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

    /** A draft of a new record. */
    @Operation(summary = "Start a draft of a new record, complete or not")
    @PostMapping
    public ResponseEntity<DraftBody<?>> create(@RequestBody T content) {
        return DraftResponses.created(records, records.drafts().start(content));
    }

    /** The published revision. */
    @Operation(summary = "The published revision")
    @GetMapping("/{slug}")
    public ResponseEntity<RevisionBody<T>> latest(@PathVariable("slug") String slug) {
        return RevisionResponses.ok(records.published(slug));
    }

    /** Every revision that the one who asks may see. */
    @Operation(summary = "Every revision that you may see, newest first")
    @GetMapping("/{slug}/revisions")
    public ResponseEntity<List<RevisionSummary>> history(@PathVariable("slug") String slug) {
        List<Revision<T>> history = records.history(slug);
        if (history.isEmpty()) {
            throw new RecordNotFoundException(records.kind(), slug, null);
        }
        boolean everybodys = history.stream().allMatch(Revision::isPublic);
        return ResponseEntity.ok()
                .cacheControl(RevisionResponses.keeping(everybodys))
                .body(history.stream().map(RevisionSummary::of).toList());
    }

    /** A draft of the next revision; {@code If-Match} names the one it changes by its entity tag. */
    @Operation(summary = "Start a draft of the next revision; If-Match names the one it changes")
    @PostMapping("/{slug}/revisions")
    public ResponseEntity<DraftBody<?>> revise(
            @PathVariable("slug") String slug,
            @RequestHeader(name = "If-Match", required = false) @Nullable String ifMatch,
            @RequestBody T content) {
        records.drafts().requireAuthor();
        Revision<T> current = records.shown(slug);
        EntityTags.require(
                ifMatch, RevisionResponses.etag(current), "Revision " + current.number() + " is published by now.");
        return DraftResponses.created(records, records.drafts().startNext(current.ref(), content));
    }

    /** One exact revision, whatever its state, if the one who asks may see it. */
    @Operation(summary = "One exact revision")
    @GetMapping("/{slug}/revisions/{number}")
    public ResponseEntity<RevisionBody<T>> revision(
            @PathVariable("slug") String slug, @PathVariable("number") int number) {
        return RevisionResponses.ok(records.exactly(new RevisionRef(slug, number)));
    }

    /** Whether a revision still has its hash. */
    @Operation(summary = "Compute the hash of a revision again")
    @GetMapping("/{slug}/revisions/{number}/verify")
    public ResponseEntity<Verification> verify(@PathVariable("slug") String slug, @PathVariable("number") int number) {
        Revision<T> revision = records.exactly(new RevisionRef(slug, number));
        return ResponseEntity.ok()
                .cacheControl(RevisionResponses.keeping(revision.isPublic()))
                .body(Verification.of(revision, records.verify(revision)));
    }
}
