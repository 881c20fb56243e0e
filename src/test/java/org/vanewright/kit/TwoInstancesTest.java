package org.vanewright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.vanewright.testing.Caller;
import org.vanewright.testing.SecondInstance;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;

/** A kit goes from this instance to another process with an empty database, in another language and time zone. */
class TwoInstancesTest extends ServerTest {
    private static final String LAYOUT = "/layouts/low-wing-pairs-over-the-taper";
    private static final String REVISION = LAYOUT + "/revisions/1";

    /** Names its results, so that what other tests publish makes no difference. */
    private static final String KIT = LAYOUT + "/kit.zip?revision=1&results=clean-stall-with-pairs-over-the-taper.1";

    @Test
    void anImportedLayoutHasTheSamePageDrawingsHashesAndKit() throws IOException {
        byte[] kit = newVisitor().file(KIT).body();
        try (SecondInstance other =
                SecondInstance.start("-Duser.timezone=Asia/Kathmandu", "-Duser.language=tr", "-Duser.country=TR")) {
            Caller there = other.steward();
            assertThat(other.visitor().get(LAYOUT).statusCode())
                    .as("empty before")
                    .isEqualTo(404);
            keep(there, kit);

            samePage(newVisitor(), there, REVISION);
            sameHashes(there);
            sameFiles(there);
            assertThat(there.file(KIT).body())
                    .as("the kit made from what was imported is the kit that came")
                    .isEqualTo(kit);
            assertThat(other.visitor().get(REVISION).statusCode())
                    .as("nobody but members sees it before it is accepted")
                    .isEqualTo(404);
            accept(there);
            samePage(newVisitor(), other.visitor(), LAYOUT);
            Document accepted = other.visitor().page(LAYOUT, 200);
            assertThat(accepted.select(".imported").text())
                    .contains("Imported from Vanewright", origin() + REVISION, "Sam of the other club brought it here")
                    .doesNotContain("not reviewed");
            assertThat(accepted.select("#flown-title")).as("results come along").hasSize(1);
        }
    }

    private void keep(Caller there, byte[] kit) {
        HttpResponse<String> sent = there.postFile("/kits/import", Map.of(), "file", kit);
        assertThat(sent.statusCode()).as(sent.body()).isEqualTo(303);
        String path = sent.headers().firstValue("location").orElseThrow().replaceFirst("^https?://[^/]*", "");
        Document preview = there.page(path, 200);
        assertThat(preview.select("dl.facts").text()).contains("Vanewright", origin(), "4 new here");
        assertThat(preview.expectFirst("main svg").html())
                .as("the preview draws the wing")
                .contains("<title");
        assertThat(there.get(REVISION).statusCode())
                .as("a preview keeps nothing")
                .isEqualTo(404);
        HttpResponse<String> kept = there.postForm(path + "/keep", Map.of());
        assertThat(kept.headers().firstValue("location"))
                .hasValueSatisfying(l -> assertThat(l).endsWith(REVISION));
    }

    private static void samePage(Caller asksHere, Caller asksThere, String path) {
        Document here = asksHere.page(path, 200);
        Document there = asksThere.page(path, 200);
        List<String> drawings = drawings(here);
        assertThat(drawings).hasSizeGreaterThan(1);
        assertThat(drawings(there)).isEqualTo(drawings);
        for (String drawing : drawings) {
            assertThat(asksThere.file(drawing).body())
                    .as(drawing)
                    .isEqualTo(asksHere.file(drawing).body());
        }
        for (String part :
                List.of("h1", ".row-block", "table.figures", "#template-title ~ ul a:not([href*=kit])", ".hash")) {
            assertThat(there.select(part).outerHtml())
                    .as(part)
                    .isEqualTo(here.select(part).outerHtml());
        }
    }

    private static List<String> drawings(Document page) {
        return page.select(".figure img").eachAttr("src");
    }

    private void sameHashes(Caller there) {
        for (JsonNode entry : TestKit.of(newVisitor().file(KIT).body()).index().get("revisions")) {
            String path = "/" + entry.get("plural").asString() + "/"
                    + entry.get("slug").asString() + "/revisions/"
                    + entry.get("revision").asInt();
            assertThat(there.page(path, 200).select(".revision-line .hash").attr("title"))
                    .isEqualTo("SHA-256 " + entry.get("sha256").asString());
            assertThat(there.page(path, 200).select(".imported h2").text())
                    .isEqualTo("Imported from Vanewright, not reviewed here");
        }
    }

    private void sameFiles(Caller there) {
        for (String file : List.of(
                "/template.pdf?revision=1&side=LEFT&paper=A4",
                "/template.svg?revision=1&side=RIGHT",
                "/template.dxf?revision=1&side=RIGHT",
                "/stations.csv?revision=1",
                "/install-sheet.pdf?revision=1")) {
            assertThat(there.file(LAYOUT + file).body())
                    .as(file)
                    .isEqualTo(newVisitor().file(LAYOUT + file).body());
        }
    }

    /** The one steward may accept what they imported, since nobody else could. */
    private static void accept(Caller there) {
        for (int round = 0; round < 3; round++) {
            for (Element link : there.page("/review", 200).select(".queue h2 a")) {
                there.postForm(link.attr("href") + "/publish", Map.of());
            }
        }
        assertThat(there.page("/review", 200).select(".lede").text()).isEqualTo("Nothing waits.");
    }
}
