package org.vanewright.sharing.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.evidence.FlownCampaigns;
import org.vanewright.record.RevisionRef;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.Tools;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

class FeedEndpointsTest extends ServerTest {
    private static final String AIRFRAME = "quillmere-tapered-low-wing";

    @TempDir
    Path directory;

    private String published(String name) {
        JsonNode demo = json(get("/api/v1/campaigns/" + FlownCampaigns.DEMO + "/revisions/1"), 200)
                .get("content");
        return shipped("campaigns", FlownCampaigns.like(demo, name, "up", -0.5));
    }

    private Document feed(String path) {
        HttpResponse<String> response = get(path);
        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.headers().firstValue("Content-Type").orElseThrow())
                .isEqualToIgnoringCase("application/atom+xml;charset=UTF-8");
        return Jsoup.parse(response.body(), origin(), Parser.xmlParser());
    }

    private void isValid(String path) throws IOException {
        Path file = directory.resolve("feed.atom");
        Files.writeString(file, get(path).body());
        String schema = Path.of(Objects.requireNonNull(getClass().getResource("/sharing/atom.rng"))
                        .getPath())
                .toString();
        Tools.run("xmllint", "--noout", "--relaxng", schema, file.toString());
    }

    @Test
    void whatIsPublishedStandsInTheFeedsWithAnIdentityThatStays() throws IOException {
        String name = "A <b>stall</b> & \"more\" ]]> ´é😀";
        String path = published(name);
        for (String feed : List.of("/feed.atom", "/airframes/" + AIRFRAME + "/feed.atom")) {
            isValid(feed);
            Element entry = feed(feed).select("entry").stream()
                    .filter(e -> e.select("link[rel=alternate]").attr("href").endsWith(path + "/revisions/1"))
                    .findFirst()
                    .orElseThrow();
            assertThat(entry.select("title").text()).isEqualTo(name);
            assertThat(entry.select("id").text()).matches("tag:[a-z0-9.-]+,2026:" + path + "/revisions/1");
            assertThat(entry.select("author name").text()).isEqualTo("Club of the test");
            assertThat(Instant.parse(entry.select("updated").text())).isAfter(Instant.parse("2020-01-01T00:00:00Z"));
        }
        Document all = feed("/feed.atom");
        assertThat(all.select("entry > id").eachText()).doesNotHaveDuplicates();
        List<Instant> times = all.select("entry > updated").eachText().stream()
                .map(Instant::parse)
                .toList();
        assertThat(times).isSortedAccordingTo((a, b) -> b.compareTo(a));
        assertThat(all.select("feed > updated").text()).isEqualTo(times.get(0).toString());
        assertThat(all.select("feed > link[rel=self]").attr("href")).endsWith("/feed.atom");
    }

    @Test
    void theFeedOfAnAirframeHasNothingOfAnother() {
        JsonNode document =
                json(get("/api/v1/airframes/" + AIRFRAME + "/revisions/1"), 200).get("content");
        String own = shipped("airframes", ((ObjectNode) document.deepCopy()).put("name", "Fed alone"));
        Document feed = feed(own + "/feed.atom");
        assertThat(feed.select("entry")).hasSize(1);
        assertThat(feed.select("entry title").text()).isEqualTo("Fed alone");
        assertThat(get("/airframes/nothing-of-the-kind/feed.atom").statusCode()).isEqualTo(404);
    }

    @Test
    void whoeverHasItIsToldSoAndANewEntryChangesIt() {
        HttpResponse<String> first = get("/airframes/" + AIRFRAME + "/feed.atom");
        String etag = first.headers().firstValue("ETag").orElseThrow();
        String modified = first.headers().firstValue("Last-Modified").orElseThrow();
        HttpResponse<String> again = get("/airframes/" + AIRFRAME + "/feed.atom", "If-None-Match", etag);
        assertThat(again.statusCode()).isEqualTo(304);
        assertThat(again.body()).isEmpty();
        assertThat(get("/airframes/" + AIRFRAME + "/feed.atom", "If-Modified-Since", modified)
                        .statusCode())
                .isEqualTo(304);
        published("Changes the feed");
        assertThat(get("/airframes/" + AIRFRAME + "/feed.atom", "If-None-Match", etag)
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void whatWasWithdrawnLeavesTheFeed() {
        String path = published("Leaves the feed");
        publishing().withdraw("campaigns", new RevisionRef(path.replace("/campaigns/", ""), 1), "Wrong mass.");
        assertThat(feed("/feed.atom").select("link[rel=alternate]").eachAttr("href"))
                .noneMatch(href -> href.contains(path + "/"));
    }

    @Test
    void pagesFollowEachOtherToTheEnd() throws IOException {
        List<String> ids = new ArrayList<>();
        String path = "/feed.atom";
        int pages = 0;
        while (!path.isEmpty() && pages++ < 20) {
            isValid(path);
            Document page = feed(path);
            ids.addAll(page.select("entry > id").eachText());
            path = page.select("link[rel=next]").attr("href").replaceFirst("^.*/feed", "/feed");
        }
        assertThat(ids).doesNotHaveDuplicates().hasSizeGreaterThan(5);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "21", "-1", "x", "999999999999", "%00"})
    void aPageThatThereIsNotIsRefused(String page) {
        assertThat(get("/feed.atom?page=" + page).statusCode()).isEqualTo(400);
    }

    @Test
    void aHostileHostGetsIntoNoAddress() {
        String evil = "evil.example";
        for (String path : List.of("/feed.atom", "/sitemap.xml", "/robots.txt", "/layouts/" + FlownCampaigns.LAYOUT)) {
            HttpResponse<String> response = get(path, "X-Forwarded-Host", evil, "Forwarded", "host=" + evil);
            assertThat(response.statusCode()).isEqualTo(200);
            assertThat(response.body()).as(path).doesNotContain(evil);
        }
    }

    @Test
    void theMapLeadsToEveryRecord() {
        Document index = Jsoup.parse(get("/sitemap.xml").body(), "", Parser.xmlParser());
        List<String> files = index.select("sitemapindex > sitemap > loc").eachText();
        assertThat(files).anyMatch(f -> f.endsWith("/sitemap-pages.xml")).allMatch(f -> f.startsWith("http"));
        List<String> found = new ArrayList<>();
        for (String file : files) {
            HttpResponse<String> response = get(file.replaceFirst("^https?://[^/]+", ""));
            assertThat(response.statusCode()).as(file).isEqualTo(200);
            Document urls = Jsoup.parse(response.body(), "", Parser.xmlParser());
            assertThat(urls.select("urlset").attr("xmlns")).isEqualTo("http://www.sitemaps.org/schemas/sitemap/0.9");
            found.addAll(urls.select("url > loc").eachText());
            urls.select("lastmod")
                    .forEach(l -> assertThat(Instant.parse(l.text())).isNotNull());
        }
        assertThat(found)
                .doesNotHaveDuplicates()
                .anyMatch(u -> u.endsWith("/layouts/" + FlownCampaigns.LAYOUT))
                .anyMatch(u -> u.endsWith("/evidence"));
        assertThat(get("/robots.txt").body()).contains("Sitemap: http").contains("/sitemap.xml");
        assertThat(get("/sitemap-nothing-1.xml").statusCode()).isEqualTo(404);
        assertThat(get("/sitemap-layouts-0.xml").statusCode()).isEqualTo(404);
    }
}
