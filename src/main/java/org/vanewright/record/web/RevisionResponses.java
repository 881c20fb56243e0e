package org.vanewright.record.web;

import java.net.URI;
import java.util.Locale;
import org.springframework.http.CacheControl;
import org.springframework.http.ResponseEntity;
import org.vanewright.record.RecordContent;
import org.vanewright.record.Revision;

/** Revisions as HTTP responses with strong entity tags. */
public final class RevisionResponses {
    private RevisionResponses() {}

    /** 200, or 304 where the caller has it already. */
    public static <T extends RecordContent> ResponseEntity<RevisionBody<T>> ok(Revision<T> revision) {
        return ResponseEntity.ok()
                .eTag(etag(revision))
                .cacheControl(keeping(revision.isPublic()))
                .body(RevisionBody.of(revision));
    }

    /** 201 at the address of the revision under {@code plural}, such as {@code airframes}. */
    public static <T extends RecordContent> ResponseEntity<RevisionBody<T>> created(
            String plural, Revision<T> revision) {
        return ResponseEntity.created(
                        URI.create("/api/v1/" + plural + "/" + revision.slug() + "/revisions/" + revision.number()))
                .eTag(etag(revision))
                .cacheControl(keeping(revision.isPublic()))
                .body(RevisionBody.of(revision));
    }

    /** Changes with whatever the body shows: the document never does, the state may. */
    public static String etag(Revision<?> revision) {
        return "\"" + revision.number() + "-" + revision.shortHash() + "-"
                + revision.state().name().toLowerCase(Locale.ROOT) + "\"";
    }

    /** What is not public stays with who asked; the rest must be asked for again, since a state may move. */
    public static CacheControl keeping(boolean everybodys) {
        return everybodys ? CacheControl.noCache() : CacheControl.noStore().cachePrivate();
    }
}
