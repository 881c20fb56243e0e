package org.vanewright.record.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.http.server.ServletServerHttpRequest;
import org.springframework.web.bind.annotation.DeleteMapping;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.PutMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.ResponseStatus;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.record.Draft;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** One's own drafts as JSON, whatever their kind. */
@RestController
@RequestMapping("/api/v1/drafts")
@Tag(name = "Drafts", description = "Your work before it is public.")
class DraftApi {
    private static final String ID = "/{id:[0-9a-f-]{36}}";

    private final Records records;
    private final JsonMapper mapper;

    DraftApi(Records records, JsonMapper mapper) {
        this.records = records;
        this.mapper = mapper;
    }

    @Operation(summary = "What you work on or have worked on, last changed first")
    @GetMapping
    List<DraftItem> mine() {
        return records.myDrafts().stream().map(DraftItem::of).toList();
    }

    @Operation(summary = "One of your drafts")
    @GetMapping(ID)
    ResponseEntity<DraftBody<?>> draft(@PathVariable("id") String id) {
        return shown(records.ofDraft(id), id);
    }

    private static <T extends RecordContent> ResponseEntity<DraftBody<?>> shown(RecordService<T> service, String id) {
        return DraftResponses.ok(service, service.drafts().find(id));
    }

    /** The body is the document of the draft's kind; {@code base} says which published revision it has taken in. */
    @Operation(summary = "Save a draft, complete or not; If-Match names the version it changes")
    @PutMapping(path = ID, consumes = MediaType.APPLICATION_JSON_VALUE)
    ResponseEntity<DraftBody<?>> save(
            @PathVariable("id") String id,
            @RequestHeader(name = "If-Match", required = false) @Nullable String ifMatch,
            @RequestParam(name = "base", required = false) @Nullable Integer base,
            @RequestBody String document,
            HttpServletRequest request) {
        return save(records.ofDraft(id), id, ifMatch, base, document, request);
    }

    private <T extends RecordContent> ResponseEntity<DraftBody<?>> save(
            RecordService<T> service,
            String id,
            @Nullable String ifMatch,
            @Nullable Integer base,
            String document,
            HttpServletRequest request) {
        Draft<T> draft = service.drafts().find(id);
        EntityTags.require(
                ifMatch, DraftResponses.etag(draft), "Version " + draft.version() + " of this draft is saved by now.");
        T content = read(document, service.contentType(), request);
        return DraftResponses.ok(service, service.drafts().save(id, draft.version(), content, base));
    }

    private <T> T read(String document, Class<T> type, HttpServletRequest request) {
        try {
            T content = mapper.readValue(document, type);
            if (content == null) {
                throw new InvalidInputException(new FieldProblem("", "null", "a document"));
            }
            return content;
        } catch (JacksonException e) {
            throw new HttpMessageNotReadableException(
                    "not a document of this kind", e, new ServletServerHttpRequest(request));
        }
    }

    @Operation(summary = "Freeze a draft as a revision that waits for a review")
    @PostMapping(ID + "/submission")
    ResponseEntity<? extends RevisionBody<?>> submit(
            @PathVariable("id") String id, @RequestBody Submission submission) {
        return submit(records.ofDraft(id), id, submission);
    }

    private static <T extends RecordContent> ResponseEntity<RevisionBody<T>> submit(
            RecordService<T> service, String id, Submission submission) {
        if (submission.version() == null) {
            throw new InvalidInputException(
                    new FieldProblem("version", "missing", "the version of the draft that you mean"));
        }
        return RevisionResponses.created(
                service.plural(),
                service.drafts().submit(id, submission.version(), submission.licence(), submission.summary()));
    }

    @Operation(summary = "Take a submission back before anybody has decided on it")
    @PostMapping(ID + "/take-back")
    ResponseEntity<DraftBody<?>> takeBack(@PathVariable("id") String id) {
        return takeBack(records.ofDraft(id), id);
    }

    private static <T extends RecordContent> ResponseEntity<DraftBody<?>> takeBack(
            RecordService<T> service, String id) {
        return DraftResponses.ok(service, service.drafts().takeBack(id));
    }

    @Operation(summary = "Give a draft up")
    @DeleteMapping(ID)
    @ResponseStatus(HttpStatus.NO_CONTENT)
    void discard(@PathVariable("id") String id) {
        records.ofDraft(id).drafts().discard(id);
    }
}
