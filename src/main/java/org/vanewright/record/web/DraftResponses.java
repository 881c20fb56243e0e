package org.vanewright.record.web;

import java.net.URI;
import java.util.List;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.Draft;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;

/** Drafts as HTTP responses; nobody keeps them. */
final class DraftResponses {
    private DraftResponses() {}

    static <T extends RecordContent> ResponseEntity<DraftBody<?>> ok(RecordService<T> records, Draft<T> draft) {
        return send(ResponseEntity.ok(), records, draft);
    }

    /** 201 at the address of the draft. */
    static <T extends RecordContent> ResponseEntity<DraftBody<?>> created(RecordService<T> records, Draft<T> draft) {
        return send(ResponseEntity.created(URI.create("/api/v1/drafts/" + draft.id())), records, draft);
    }

    private static <T extends RecordContent> ResponseEntity<DraftBody<?>> send(
            ResponseEntity.BodyBuilder response, RecordService<T> records, Draft<T> draft) {
        List<FieldProblem> problems = records.check(draft.content());
        return response.eTag(etag(draft))
                .cacheControl(CacheControl.noStore().cachePrivate())
                .body(DraftBody.of(draft, problems));
    }

    static String etag(Draft<?> draft) {
        return "\"" + draft.version() + "\"";
    }
}
