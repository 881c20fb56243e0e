package org.vanewright.campaign.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.vanewright.account.Role;
import org.vanewright.testing.Pictures;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Tufts from the grid to the maps. */
class TuftPagesTest extends ServerTest {
    private static final String SLUG = "clean-stall-with-pairs-over-the-taper";
    private static final String API = "/api/v1/campaigns";
    private static final Map<String, String> GRID = Map.of(
            "surface",
            "Wing",
            "side",
            "UPPER",
            "wings",
            "RIGHT",
            "stationsMm",
            "1000; 2000 3000",
            "chordPercent",
            "40 80");

    private final Map<SignedIn, String> tokens = new HashMap<>();

    private String token(SignedIn member) {
        return tokens.computeIfAbsent(member, m -> bearer(m.person()));
    }

    private ObjectNode document(String name) {
        ObjectNode content =
                (ObjectNode) json(get(API + "/" + SLUG + "/revisions/1"), 200).get("content");
        return content.put("name", name);
    }

    private String draft(SignedIn member, ObjectNode document) {
        JsonNode created = json(postJson(API, document.toString(), "Authorization", token(member)), 201);
        return "/campaigns/drafts/" + created.get("id").asString();
    }

    private String emptyDraft(SignedIn member, String name) {
        ObjectNode document = document(name);
        document.remove(List.of("points", "handling", "provenance", "tufts"));
        return draft(member, document);
    }

    private JsonNode content(SignedIn member, String draft) {
        String id = draft.substring(draft.lastIndexOf('/') + 1);
        return json(get("/api/v1/drafts/" + id, "Authorization", token(member)), 200)
                .get("content");
    }

    private static Map<String, String> fields(Document page, Map<String, String> typed) {
        Map<String, String> fields = new LinkedHashMap<>();
        page.select("form[data-tufts] input[type=hidden], form[data-tufts] input[type=radio][checked]")
                .forEach(i -> fields.put(i.attr("name"), i.attr("value")));
        fields.putAll(typed);
        return fields;
    }

    @Test
    void theCampaignShowsMapsSharesDifferencesAndTheLine() {
        Document page = page("/campaigns/" + SLUG, 200);
        Element tufts = page.expectFirst("section[aria-labelledby=tufts-title]");
        assertThat(tufts.select("table").get(0).select("tbody tr")).hasSize(4);
        assertThat(tufts.select("table").get(1).select("tbody tr")).hasSize(2);
        assertThat(tufts.select("table").get(1).select("tbody tr").get(1).text())
                .contains("A to B")
                .contains("no longer, of 47");
        assertThat(tufts.select("svg.tuft-map")).hasSize(6);
        assertThat(tufts.select("svg.tuft-map .tuft")).hasSize(6 * 48);
        assertThat(tufts.select("svg.tuft-map .tuft-line")).isNotEmpty();
        assertThat(tufts.select("svg.tuft-map desc").eachText()).allMatch(d -> d.contains("%") || d.contains("steady"));
        assertThat(tufts.select(".tuft-show input[type=radio]")).hasSize(8);
        assertThat(tufts.text()).contains("1 tuft, 2 %").contains("no interval").doesNotContain("NaN");
        assertThat(page.select("*[style]")).isEmpty();
        assertThat(page("/campaigns/" + SLUG + "/revisions/1", 200)
                        .select("#provenance, section")
                        .text())
                .contains("Tuft surveys");
    }

    @Test
    void aGridIsMadeThenASurveyIsTappedChangedAndTakenOut() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = emptyDraft(member, "Tufts by form");
        assertThat(member.postForm(draft + "/tufts", GRID).statusCode()).isEqualTo(303);
        Document list = member.page(draft + "/tufts", 200);
        String survey = list.select("a.button[href*=/tufts/]").attr("href");
        Document form = member.page(survey, 200);
        assertThat(form.select(".tuft-row")).hasSize(6);
        assertThat(form.select(".tuft-row input[type=radio][checked][value=-]")).hasSize(6);

        Map<String, String> typed = fields(
                form,
                Map.of(
                        "configuration",
                        "A",
                        "indicatedAirspeedKt",
                        "52",
                        "right[0].row[0]",
                        "S",
                        "right[2].row[1]",
                        "R",
                        "action",
                        "steady"));
        HttpResponse<String> rest = member.postForm(survey, typed);
        assertThat(rest.statusCode()).isEqualTo(200);
        assertThat(content(member, draft).get("tufts").get(0).has("surveys"))
                .as("not saved yet")
                .isFalse();
        assertThat(rest.body()).contains("aria-label=\"Right 3\u00a0m, 80 %\"");

        typed.put("action", "save");
        typed.put("right[1].row[0]", "U");
        assertThat(member.postForm(survey, typed).statusCode()).isEqualTo(303);
        assertThat(member.postForm(survey, typed).statusCode()).as("sent twice").isEqualTo(303);
        JsonNode saved = content(member, draft).get("tufts").get(0).get("surveys");
        assertThat(saved).hasSize(1);
        assertThat(saved.get(0).get("states").asString()).isEqualTo("S-U--R");

        Document shown = member.page(draft + "/tufts", 200);
        assertThat(shown.select("svg.tuft-map")).hasSize(1);
        assertThat(shown.select(".recorded li").text()).contains("A at 52 kt indicated");
        String recorded = shown.select(".recorded li a").attr("href");
        assertThat(member.page(recorded, 200)
                        .select("input[name='right[2].row[1]'][checked]")
                        .attr("value"))
                .isEqualTo("R");
        String grid = survey.substring(survey.lastIndexOf('/'));
        assertThat(member.postForm(draft + "/tufts" + grid + "/remove", Map.of())
                        .statusCode())
                .as("has a survey")
                .isEqualTo(400);
        assertThat(member.postForm(recorded + "/remove", Map.of()).statusCode()).isEqualTo(303);
        assertThat(member.postForm(draft + "/tufts" + grid + "/remove", Map.of())
                        .statusCode())
                .isEqualTo(303);
        assertThat(content(member, draft).has("tufts")).isFalse();
    }

    @Test
    void whatIsWrongStandsBesideItsFieldAndNothingIsSaved() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = emptyDraft(member, "Tufts refused");
        for (Map.Entry<String, String> wrong : Map.of(
                        "stationsMm", "100 9000",
                        "chordPercent", "80 40",
                        "surface", "Rudder",
                        "side", "INNER",
                        "wings", "")
                .entrySet()) {
            Map<String, String> typed = new LinkedHashMap<>(GRID);
            typed.put(wrong.getKey(), wrong.getValue());
            HttpResponse<String> refused = member.postForm(draft + "/tufts", typed);
            assertThat(refused.statusCode()).as(wrong.getKey()).isEqualTo(422);
            assertThat(refused.body()).contains("href=\"#" + wrong.getKey() + "\"");
        }
        assertThat(content(member, draft).has("tufts")).isFalse();
        member.postForm(draft + "/tufts", GRID);
        String survey = member.page(draft + "/tufts", 200)
                .select("a.button[href*=/tufts/]")
                .attr("href");
        Map<String, String> typed = fields(
                member.page(survey, 200), Map.of("indicatedAirspeedKt", "fast", "right[1].row[1]", "X", "at", "noon"));
        HttpResponse<String> refused = member.postForm(survey, typed);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("fast").contains("right-1-row-1");
        typed.put("indicatedAirspeedKt", "1");
        typed.put("right[1].row[1]", "S");
        assertThat(member.postForm(survey, typed).body())
                .contains("Must be a number from 5")
                .contains("noon");
        assertThat(content(member, draft).get("tufts").get(0).has("surveys")).isFalse();
        assertThat(member.page(draft + "/tufts/unknown", 404).text()).doesNotContain("Exception");
        assertThat(member.page(survey + "/surveys/unknown", 404).text()).doesNotContain("Exception");
    }

    @Test
    void aPhotographIsKeptWithItsSurveyAndARefusedOneKeepsNothing() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = emptyDraft(member, "Tufts with a photograph");
        member.postForm(draft + "/tufts", GRID);
        String survey = member.page(draft + "/tufts", 200)
                .select("a.button[href*=/tufts/]")
                .attr("href");
        Map<String, String> typed = fields(
                member.page(survey, 200),
                Map.of("configuration", "B", "indicatedAirspeedKt", "52", "right[0].row[1]", "U", "action", "save"));
        byte[] nothing = "no picture".getBytes(StandardCharsets.UTF_8);
        HttpResponse<String> refused = member.postFile(survey, typed, "pictures", nothing);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(Jsoup.parse(refused.body())
                        .select("input[name='right[0].row[1]'][checked]")
                        .attr("value"))
                .isEqualTo("U");
        assertThat(content(member, draft).get("tufts").get(0).has("surveys")).isFalse();

        byte[] picture = Pictures.encoded(Pictures.quarters(640, 480), "png");
        assertThat(member.postFile(survey, typed, "pictures", picture).statusCode())
                .isEqualTo(303);
        JsonNode content = content(member, draft);
        String hash = content.get("photographs").get(0).get("sha256").asString();
        JsonNode saved = content.get("tufts").get(0).get("surveys").get(0);
        assertThat(saved.get("photographs").get(0).asString()).isEqualTo(hash);
        Document shown = member.page(draft + "/tufts", 200);
        assertThat(shown.select("a[href='/photographs/" + hash + ".jpg']")).hasSize(1);
        String recorded = shown.select(".recorded li a").attr("href");
        assertThat(member.page(recorded, 200)
                        .select("input[type=checkbox][checked]")
                        .attr("value"))
                .isEqualTo(hash);
    }

    @Test
    void oddDraftsAreShownAndSayWhatStandsInTheWay() {
        SignedIn member = signIn(Role.MEMBER);
        ObjectNode document = document("Odd tufts");
        ArrayNode grids = (ArrayNode) document.get("tufts");
        ((ObjectNode) grids.get(0)).put("surface", "Canard");
        grids.addObject().put("id", "bare");
        ObjectNode short1 = grids.addObject();
        short1.put("id", "short").put("surface", "Wing").put("side", "LOWER").put("wings", "LEFT");
        short1.putArray("stationsMm").add(1000);
        short1.putArray("chordFractions").add(0.5).add(0.2);
        short1.putArray("surveys").addObject().put("id", "s").put("states", "Q");
        String draft = draft(member, document);
        Document page = member.page(draft + "/tufts", 200);
        assertThat(page.text()).contains("cannot be drawn").contains("a surface of");
        for (String grid : List.of("demo-tufts", "bare", "short")) {
            assertThat(member.page(draft + "/tufts/" + grid, 200).text()).contains("Record a tuft survey");
        }
        assertThat(member.page(draft + "/tufts/short/surveys/s", 200).text()).contains("does not fit");
        assertThat(member.page(draft, 200).select(".problems").text()).contains("Tuft 3, survey 1, states");
    }
}
