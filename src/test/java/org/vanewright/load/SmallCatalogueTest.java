package org.vanewright.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.vanewright.Vanewright;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.testing.CountedStatements;

/**
 * A service of its own with a catalogue of the generator: what it writes is what the service would have written, and no
 * page asks more statements where more is published.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SmallCatalogueTest {
    private static final CatalogueSize SIZE = CatalogueSize.ofLayouts(300, 7);
    private static final int TRIED = 12;

    private final HttpClient client = HttpClient.newHttpClient();
    private final ConfigurableApplicationContext service = SpringApplication.run(
            Vanewright.class, "--server.port=0", "--spring.profiles.active=test", "--vanewright.jobs.threads=0");

    @BeforeAll
    void write() {
        LargeCatalogue.records(service, SIZE, line -> {});
        LargeCatalogue.index(service, SIZE, line -> {});
    }

    @AfterAll
    void stop() {
        service.close();
    }

    private HttpResponse<String> get(String path, String... headers) {
        String origin = "http://localhost:" + service.getEnvironment().getRequiredProperty("local.server.port");
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(origin + path));
        try {
            return client.send(
                    (headers.length == 0 ? request : request.headers(headers)).build(),
                    HttpResponse.BodyHandlers.ofString());
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    private RecordService<?> records(LargeCatalogue.Kind kind) {
        return service.getBean(Records.class).ofPlural(kind.plural()).orElseThrow();
    }

    @ParameterizedTest
    @EnumSource
    void everyDocumentIsAsTheServiceWouldWriteIt(LargeCatalogue.Kind kind) {
        assertThat(records(kind).countPublished()).isEqualTo(kind.count(SIZE));
        int step = Math.max(1, kind.count(SIZE) / TRIED);
        for (int i = 0; i < kind.count(SIZE); i += step) {
            valid(records(kind), kind.slug(SIZE, i), kind.documents(SIZE).apply(i));
        }
    }

    private static <T extends RecordContent> void valid(RecordService<T> records, String slug, RecordContent made) {
        Revision<T> revision = records.published(slug);
        assertThat(revision.content()).isEqualTo(made);
        assertThat(records.verify(revision)).isTrue();
        assertThat(records.check(revision.content())).as(slug).isEmpty();
    }

    @Test
    void everythingIsFound() {
        int all = IntStream.of(
                        SIZE.airframes(),
                        SIZE.devices(),
                        SIZE.layouts(),
                        SIZE.campaigns(),
                        SIZE.installations(),
                        SIZE.inspections())
                .sum();
        assertThat(get("/api/v1/search?limit=1").body()).contains("\"total\":" + all);
    }

    /**
     * Most statements of a page. Every list here is full, and what it lists names other records, so that a statement for each
     * would be too many.
     */
    @ParameterizedTest
    @CsvSource({
        "/, 12",
        "/airframes, 4",
        "/devices, 4",
        "/layouts, 6",
        "/campaigns, 5",
        "/installations, 7",
        "/inspections, 5",
        "/people, 12",
        "/compare, 5",
        "/evidence, 5",
        "/retention, 12",
        "/search, 8",
        "/search?q=vane, 8",
        "/search?q=vane&facet=kind:layout&sort=effect, 8",
        "/search?q=trail, 8",
        "/feed.atom, 20",
        "/sitemap.xml, 10",
    })
    void aPageAsksSoManyStatements(String path, int most) {
        assertThat(get(path).statusCode()).isEqualTo(200);
        assertFewStatements(path, most);
    }

    /** One that is looked at first keeps what it finds out. */
    private void assertFewStatements(String path, int most) {
        String word = "small " + path;
        HttpResponse<String> answer = get(path, CountedStatements.HEADER, word);
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        List<String> asked = CountedStatements.of(word);
        assertThat(asked.size()).as(path + "\n" + String.join("\n", asked)).isBetween(1, most);
    }

    @ParameterizedTest
    @EnumSource
    void pagesOfRecordsAnswerWithFewStatements(LargeCatalogue.Kind kind) {
        for (int i = 0; i < kind.count(SIZE); i += Math.max(1, kind.count(SIZE) / 4)) {
            String path = "/" + kind.plural() + "/" + kind.slug(SIZE, i);
            assertFewStatements(path, 14);
            assertThat(Jsoup.parse(get(path).body()).select("h1").text())
                    .isEqualTo(kind.documents(SIZE).apply(i).name());
        }
    }

    /** What can be worked out of a layout. */
    @ParameterizedTest
    @ValueSource(strings = {"study", "bond", "tape-plan", "gauges", "install-sheet", "print-plan", "history"})
    void pagesOfALayoutAnswerWithFewStatements(String page) {
        assertFewStatements("/layouts/" + LargeCatalogue.Kind.LAYOUT.slug(SIZE, 7) + "/" + page, 16);
    }

    /** Hundreds of test points would make a page heavy. */
    @Test
    void aLargeCampaignHasItsPlotsAndTestPointsApart() {
        String path = "/campaigns/" + LargeCatalogue.Kind.CAMPAIGN.slug(SIZE, 0);
        Document page = Jsoup.parse(get(path).body());
        assertThat(page.select("#points table")).isEmpty();
        List<String> plots = page.select("img.plot").eachAttr("src");
        assertThat(plots).hasSizeGreaterThanOrEqualTo(2).allSatisfy(plot -> {
            HttpResponse<String> answer = get(plot);
            assertThat(answer.statusCode()).as(plot).isEqualTo(200);
            assertThat(answer.headers().firstValue("Content-Type")).contains("image/svg+xml");
            assertThat(answer.headers().firstValue("Cache-Control").orElse("")).contains("immutable");
            assertThat(answer.body()).startsWith("<svg").contains("prefers-color-scheme: dark");
        });
        assertThat(get(plots.get(0).replaceFirst("[a-z]+[.]svg$", "nothing.svg"))
                        .statusCode())
                .isEqualTo(404);
        String all = page.select("#points a").attr("href");
        int count = Integer.parseInt(page.select("#points a").text().replaceAll("[^0-9]", ""));
        assertThat(count).isGreaterThan(60);
        assertThat(Jsoup.parse(get(all).body()).select("#points tbody tr")).hasSize(count);
    }

    /** A cursor made for any record leads to the page behind it, as the link of a page does. */
    @Test
    void listsGoOnBehindAnyRecord() {
        String next = Jsoup.parse(get("/layouts").body()).select("a[rel=next]").attr("href");
        assertThat(get(next).statusCode()).isEqualTo(200);
        String behind = "/layouts?cursor=" + LargeCatalogue.Kind.LAYOUT.cursor(SIZE, 150);
        assertThat(Jsoup.parse(get(behind).body()).select(".card h2").eachText())
                .hasSize(12)
                .first()
                .isEqualTo(LargeCatalogue.Kind.LAYOUT.documents(SIZE).apply(149).name());
        assertFewStatements(behind, 6);
    }
}
