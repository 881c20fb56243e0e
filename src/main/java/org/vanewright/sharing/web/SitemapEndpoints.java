package org.vanewright.sharing.web;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.sharing.FeedDocuments;
import org.vanewright.sharing.Sitemap;

/** For whoever walks the whole public record. */
@Controller
class SitemapEndpoints {
    private static final MediaType XML = new MediaType("application", "xml", StandardCharsets.UTF_8);

    private final Sitemap sitemap;
    private final FeedDocuments documents;

    SitemapEndpoints(Sitemap sitemap, FeedDocuments documents) {
        this.sitemap = sitemap;
        this.documents = documents;
    }

    @GetMapping("/sitemap.xml")
    ResponseEntity<String> index() {
        return kept(XML, sitemap.index(documents.base()));
    }

    @GetMapping("/sitemap-pages.xml")
    ResponseEntity<String> pages() {
        return kept(XML, sitemap.pages(documents.base()));
    }

    @GetMapping("/sitemap-{plural:[a-z-]{1,40}}-{number:[1-9][0-9]{0,3}}.xml")
    ResponseEntity<String> records(@PathVariable("plural") String plural, @PathVariable("number") int number) {
        return kept(
                XML,
                sitemap.records(documents.base(), plural, number)
                        .orElseThrow(() -> new RecordNotFoundException("map", plural, null)));
    }

    /** What is not public is found by nobody; these only cost a walker's time. */
    @GetMapping("/robots.txt")
    ResponseEntity<String> robots() {
        return kept(new MediaType("text", "plain", StandardCharsets.UTF_8), """
                User-agent: *
                Disallow: /account
                Disallow: /drafts
                Disallow: /review
                Disallow: /sign-in
                Disallow: /steward
                Sitemap: %s/sitemap.xml
                """.formatted(documents.base()));
    }

    private static ResponseEntity<String> kept(MediaType type, String body) {
        return ResponseEntity.ok()
                .contentType(type)
                .cacheControl(CacheControl.maxAge(Duration.ofHours(1)).cachePublic())
                .body(body);
    }
}
