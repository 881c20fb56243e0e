package org.vanewright.catalogue.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.record.RevisionRef;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

class SearchPagesTest extends ServerTest {
    private static final String PAIRS = "/layouts/low-wing-pairs-over-the-taper";

    private static List<String> found(Document page) {
        return page.select(".hits h3 a").eachAttr("href");
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private JsonNode api(String query) {
        return json(get("/api/v1/search?" + query), 200);
    }

    @Test
    void everyPageHasAFieldThatLeadsToTheSearch() {
        Element form = page("/layouts", 200).expectFirst("header form[role=search]");
        assertThat(form.attr("action")).isEqualTo("/search");
        assertThat(form.attr("method")).isEqualTo("get");
        assertThat(form.select("input[name=q]")).hasSize(1);
        assertThat(page("/search", 200).select("form[role=search]")).hasSize(1);
    }

    @Test
    void theDemonstrationIsFoundByWordsWithItsDrawingAndItsMeasuredChange() {
        Document page = page("/search?q=pairs+taper&facet=kind:layout", 200);
        assertThat(found(page)).contains(PAIRS);
        Element card = page.select(".hits li:has(a[href=" + PAIRS + "])").get(0);
        assertThat(card.select(".claim-line").text()).contains("Stall speed lower by");
        String drawing = card.expectFirst("img").attr("src");
        HttpResponse<String> svg = get(drawing);
        assertThat(svg.statusCode()).isEqualTo(200);
        assertThat(svg.headers().firstValue("Content-Type").orElse("")).startsWith("image/svg+xml");
        assertThat(svg.headers().firstValue("Cache-Control").orElse("")).contains("immutable");
        assertThat(svg.body()).startsWith("<svg").contains("prefers-color-scheme: dark");
        assertThat(page.select("input[name=facet]").eachAttr("value")).containsExactly("kind:layout");
    }

    @Test
    void facetsAreChosenAndRemovedOneByOneInTheAddress() {
        Document page = page("/search?q=quillmere&sort=date", 200);
        Element layouts =
                page.select(".facets a:has(.value:matchesOwn(^Layout$))").get(0);
        int count = Integer.parseInt(layouts.expectFirst(".count").ownText().strip());
        Document narrowed = page(layouts.attr("href"), 200);
        assertThat(found(narrowed)).isNotEmpty().allMatch(a -> a.startsWith("/layouts/"));
        assertThat(narrowed.select("#found-heading").text()).startsWith(count + " results for “quillmere”");
        assertThat(narrowed.select(".sorts a[aria-current]").text()).isEqualTo("Date");
        Element chip = narrowed.expectFirst(".chips a");
        assertThat(chip.text()).startsWith("Kind: Layout");
        assertThat(chip.attr("href")).isEqualTo("/search?q=quillmere&sort=date");
    }

    @Test
    void aSlipIsForgiven() {
        Document page = page("/search?q=quilmere+tapred", 200);
        assertThat(found(page)).contains("/airframes/quillmere-tapered-low-wing");
        assertThat(page.select(".search-found .note").eachText())
                .anyMatch(t -> t.contains("“quilmere”") && t.contains("“quillmere”"));
    }

    @Test
    void anEmptyResultOffersOneFacetLess() {
        Document page = page("/search?q=quillmere&facet=kind:layout&facet=adhesive:gel", 200);
        assertThat(found(page)).isEmpty();
        assertThat(page.select(".chips a").eachText()).anyMatch(t -> t.startsWith("Adhesive class: Gel-like"));
        Element offer = page.select(".offers a:contains(Adhesive class)").get(0);
        assertThat(found(page(offer.attr("href"), 200))).isNotEmpty();
        assertThat(page("/search?q=???", 200).text()).contains("There is no word in that");
    }

    @Test
    void whatIsPublishedIsFoundAtOnceAndWhatIsWithdrawnIsNot() {
        ObjectNode device = (ObjectNode)
                json(get("/api/v1/devices/rectangular-vane-8-by-20"), 200).get("content");
        device.put("name", "Zebrafinch searched vane");
        String address = shipped("devices", device);
        assertThat(found(page("/search?q=zebrafinches", 200))).containsExactly(address);
        JsonNode body = api("q=zebrafinch&facet=planform:rectangular");
        assertThat(body.get("total").asInt()).isEqualTo(1);
        assertThat(body.get("items").get(0).get("path").asString()).isEqualTo(address);
        assertThat(api("q=zebrafinch&facet=planform:ogival")
                        .get("withOneFacetLess")
                        .get(0)
                        .get("total")
                        .asInt())
                .isEqualTo(1);
        publishing().withdraw("devices", new RevisionRef(address.replaceFirst(".*/", ""), 1), "Tried only");
        assertThat(api("q=zebrafinch").get("total").asInt()).isZero();
    }

    /** What a campaign measured belongs to the layout that it flew, until the campaign is withdrawn. */
    @Test
    void aCampaignTellsOfTheLayoutThatItFlew() {
        ObjectNode layout = (ObjectNode) json(get("/api/v1" + PAIRS), 200).get("content");
        layout.put("name", "Kittiwake layout");
        String address = shipped("layouts", layout);
        String slug = address.replaceFirst(".*/", "");
        assertThat(api("q=kittiwake&facet=flown:not-flown").get("total").asInt())
                .isEqualTo(1);

        ObjectNode campaign = (ObjectNode) json(get("/api/v1/campaigns/clean-stall-with-pairs-over-the-taper"), 200)
                .get("content");
        campaign.put("name", "Kittiwake campaign");
        ObjectNode flown =
                (ObjectNode) campaign.get("plan").get("configurations").get(1).get("layout");
        flown.put("slug", slug).put("revision", 1);
        String flights = shipped("campaigns", campaign).replaceFirst(".*/", "");
        JsonNode body = api("q=kittiwake&facet=kind:layout&facet=interval:excludes-zero&sort=effect");
        assertThat(body.get("total").asInt()).isEqualTo(1);
        assertThat(body.get("items").get(0).get("measuredChange").asDouble()).isBetween(0.01, 0.2);
        assertThat(body.get("items").get(0).get("measured").asString()).startsWith("Stall speed lower by");

        publishing().withdraw("campaigns", new RevisionRef(flights, 1), "Tried only");
        assertThat(api("q=kittiwake&facet=flown:not-flown").get("total").asInt())
                .isEqualTo(1);
    }

    @Test
    void pagesFollowEachOther() {
        JsonNode first = api("limit=3&sort=date");
        JsonNode second =
                api("limit=3&sort=date&after=" + first.get("nextAfter").asString());
        assertThat(first.get("items").size()).isEqualTo(3);
        assertThat(second.get("items").get(0).get("publishedAt").asString())
                .isLessThanOrEqualTo(
                        first.get("items").get(2).get("publishedAt").asString());
        assertThat(second.get("items").get(0)).isNotEqualTo(first.get("items").get(2));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "facet=colour:red",
                "facet=kind",
                "sort=best",
                "after=x",
                "limit=0",
                "limit=101",
                "limit=many",
                "q=a%00b",
                "q=%E2%80%AEb"
            })
    void badParametersAreProblemsWithTheirField(String query) {
        HttpResponse<String> response = get("/api/v1/search?" + query);
        JsonNode problem = json(response, 400);
        assertThat(response.headers().firstValue("Content-Type").orElse("")).startsWith("application/problem+json");
        if (!query.equals("limit=many")) {
            assertThat(problem.get("errors").get(0).get("field").asString()).isEqualTo(query.replaceFirst("=.*", ""));
        }
    }

    @Test
    void aPageSaysBesideTheFieldWhatCannotBeUsed() {
        String typed = "x".repeat(201);
        Document page = page("/search?q=" + typed, 400);
        assertThat(page.select("#q-error").text()).contains("200 characters");
        assertThat(page.expectFirst("#q").val()).isEqualTo(typed);
        Document facet = page("/search?q=vane&facet=" + encoded("<b>:x"), 400);
        assertThat(facet.select(".problems li").text()).contains("<b>:x").contains("such as kind:layout");
        assertThat(facet.expectFirst("#q").val()).isEqualTo("vane");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"'", "\" or 1=1", "<script>alert(1)</script>", "a & !b", ":*", "%", "\\", "{{7*7}}", "${7*7}"})
    void whatLooksLikeCodeIsText(String q) {
        Document page = page("/search?q=" + encoded(q), 200);
        assertThat(page.expectFirst("#q").val()).isEqualTo(q);
        assertThat(page.select("main script")).isEmpty();
    }
}
