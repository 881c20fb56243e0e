package org.vanewright.sharing.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.evidence.FlownCampaigns;
import org.vanewright.record.RevisionRef;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;

class RecordMetadataTest extends ServerTest {
    private static final String HOSTILE = "</script><script>alert(1)</script><!-- \u2028 & \"x\"";

    private static String path(String address) {
        return address.replaceFirst("^https?://[^/]+", "");
    }

    private JsonNode dataset(Document page) {
        List<Element> blocks = page.select("script[type=application/ld+json]");
        assertThat(blocks).hasSize(1);
        return mapper().readTree(blocks.get(0).data());
    }

    /** One that comes with the service. */
    private String demo(String plural) {
        return json(get("/api/v1/" + plural + "?limit=200"), 200)
                .get("items")
                .valueStream()
                .filter(item -> item.get("contributor").asString().equals("Vanewright demonstration"))
                .findFirst()
                .orElseThrow()
                .get("slug")
                .asString();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "airframes",
                "devices",
                "layouts",
                "adhesives",
                "campaigns",
                "print-runs",
                "installations",
                "inspections"
            })
    void everyRecordSaysWhatItIsAndWhereItsFilesAre(String plural) {
        String address = "/" + plural + "/" + demo(plural);
        Document page = page(address, 200);
        JsonNode set = dataset(page);
        assertThat(set.get("@type").asString()).isEqualTo("Dataset");
        assertThat(set.get("description").asString()).hasSizeBetween(50, 5000);
        assertThat(set.get("creator").get("name").asString()).isNotBlank();
        assertThat(set.get("dateModified").asString()).matches("\\d{4}-\\d\\d-\\d\\dT.*Z");
        assertThat(set.get("license").asString()).startsWith("https://creativecommons.org/");
        assertThat(set.get("identifier").get("value").asString()).matches("[0-9a-f]{64}");
        assertThat(set.get("distribution").size()).isPositive();
        set.get("distribution").forEach(file -> {
            HttpResponse<String> response = get(path(file.get("contentUrl").asString()));
            assertThat(response.statusCode())
                    .as(file.get("contentUrl").asString())
                    .isEqualTo(200);
            assertThat(response.headers().firstValue("Content-Type").orElseThrow())
                    .startsWith(file.get("encodingFormat").asString());
        });
        assertThat(page.select("meta[property=og:title]").attr("content"))
                .isEqualTo(set.get("name").asString());
        assertThat(get(path(page.select("meta[property=og:image]").attr("content")))
                        .headers()
                        .firstValue("Content-Type"))
                .contains("image/png");
        assertThat(page.select("link[rel=alternate][type=application/atom+xml]"))
                .isNotEmpty();
    }

    @Test
    void aNameCannotEndTheBlockItStandsIn() {
        JsonNode demo = json(get("/api/v1/campaigns/" + FlownCampaigns.DEMO + "/revisions/1"), 200)
                .get("content");
        String name = HOSTILE.replace("\u2028 ", "");
        Document page = page(shipped("campaigns", FlownCampaigns.like(demo, name, "up", 0)), 200);
        assertThat(dataset(page).get("name").asString()).isEqualTo(name);
        assertThat(page.select("script").stream().map(Element::data)).noneMatch(d -> d.startsWith("alert"));
        assertThat(page.select("meta[property=og:title]").attr("content")).isEqualTo(name);
    }

    @Test
    void pagesThatAreNoRecordsHaveNone() {
        for (String path : List.of("/", "/layouts", "/evidence", "/layouts/" + FlownCampaigns.LAYOUT + "/study")) {
            assertThat(page(path, 200).select("script[type=application/ld+json], meta[property^=og]"))
                    .as(path)
                    .isEmpty();
        }
    }

    private static byte[] bytes(String address) {
        try {
            return HttpClient.newHttpClient()
                    .send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofByteArray())
                    .body();
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"airframes", "devices", "layouts", "campaigns", "adhesives"})
    void theCardIsAPictureOfTheUsualSizeWithSomethingOnIt(String plural) throws IOException {
        String address = origin() + "/" + plural + "/" + demo(plural) + "/revisions/1/card.png";
        byte[] png = bytes(address);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
        assertThat(image.getWidth()).isEqualTo(1200);
        assertThat(image.getHeight()).isEqualTo(630);
        Set<Integer> colours = new HashSet<>();
        for (int y = 130; y < 520; y += 2) {
            for (int x = 60; x < 1140; x += 2) {
                colours.add(image.getRGB(x, y));
            }
        }
        assertThat(colours).hasSizeGreaterThan(10);
        assertThat(bytes(address)).as("the same again").isEqualTo(png);
        assertThat(png.length).isLessThan(300_000);
    }

    @Test
    void whoHasTheCardIsToldSo() {
        String path = "/layouts/" + FlownCampaigns.LAYOUT + "/revisions/1/card.png";
        String etag = get(path).headers().firstValue("ETag").orElseThrow();
        assertThat(get(path, "If-None-Match", etag).statusCode()).isEqualTo(304);
    }

    @Test
    void aWithdrawnRecordKeepsItsCardAndNothingElseHasOne() {
        JsonNode demo = json(get("/api/v1/campaigns/" + FlownCampaigns.DEMO + "/revisions/1"), 200)
                .get("content");
        String own = shipped("campaigns", FlownCampaigns.like(demo, "Withdrawn with a card", "up", 0));
        publishing().withdraw("campaigns", new RevisionRef(own.replace("/campaigns/", ""), 1), "Wrong.");
        assertThat(get(own + "/revisions/1/card.png").statusCode()).isEqualTo(200);
        assertThat(dataset(page(own, 200)).get("creativeWorkStatus").asString()).isEqualTo("withdrawn");
        assertThat(get(own + "/revisions/2/card.png").statusCode()).isEqualTo(404);
        assertThat(get("/nothing/of-the-kind/revisions/1/card.png").statusCode())
                .isEqualTo(404);
    }
}
