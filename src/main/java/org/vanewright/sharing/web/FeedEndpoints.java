package org.vanewright.sharing.web;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeService;
import org.vanewright.engineering.input.Checks;
import org.vanewright.platform.Downloads;
import org.vanewright.record.Revision;
import org.vanewright.record.web.RecordPaths;
import org.vanewright.sharing.FeedDocuments;
import org.vanewright.sharing.Feeds;

/** Atom feeds of what is newly published. */
@Controller
class FeedEndpoints {
    private static final MediaType ATOM = new MediaType("application", "atom+xml", StandardCharsets.UTF_8);

    private final Feeds feeds;
    private final FeedDocuments documents;
    private final AirframeService airframes;

    FeedEndpoints(Feeds feeds, FeedDocuments documents, AirframeService airframes) {
        this.feeds = feeds;
        this.documents = documents;
        this.airframes = airframes;
    }

    @GetMapping("/feed.atom")
    ResponseEntity<byte[]> all(@RequestParam(name = "page", defaultValue = "1") int number, WebRequest request) {
        checkPage(number);
        Feeds.Page page = feeds.all(number);
        return send(request, page, () -> documents.all(page));
    }

    @GetMapping("/airframes/" + RecordPaths.SLUG + "/feed.atom")
    ResponseEntity<byte[]> ofAirframe(
            @PathVariable("slug") String slug,
            @RequestParam(name = "page", defaultValue = "1") int number,
            WebRequest request) {
        checkPage(number);
        Revision<AirframeDocument> airframe = airframes.shown(slug);
        Feeds.Page page = feeds.ofAirframe(airframe, number);
        return send(request, page, () -> documents.ofAirframe(airframe, page));
    }

    private static void checkPage(int number) {
        Checks checks = new Checks();
        checks.require(
                number >= 1 && number <= Feeds.MOST_PAGES,
                "page",
                number,
                "a whole number from 1 to " + Feeds.MOST_PAGES);
        checks.throwIfAny();
    }

    /** Nothing is read for whoever has it already. */
    private ResponseEntity<byte[]> send(WebRequest request, Feeds.Page page, Supplier<String> document) {
        String etag = "\"" + Downloads.sha256(documents.contentKey(page).getBytes(StandardCharsets.UTF_8)) + "\"";
        Instant updated = page.updatedAt();
        boolean fresh = request.checkNotModified(etag, Math.max(1, updated.toEpochMilli()));
        ResponseEntity.BodyBuilder answer = ResponseEntity.status(fresh ? HttpStatus.NOT_MODIFIED : HttpStatus.OK)
                .eTag(etag)
                .lastModified(updated)
                .cacheControl(CacheControl.noCache().cachePublic());
        byte @Nullable [] body = fresh ? null : document.get().getBytes(StandardCharsets.UTF_8);
        return body == null ? answer.build() : answer.contentType(ATOM).body(body);
    }
}
