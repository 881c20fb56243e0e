package org.vanewright.evidence.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.inference.meta.Effect;
import org.vanewright.engineering.inference.meta.RandomEffects;
import org.vanewright.engineering.inference.meta.TauEstimator;
import org.vanewright.evidence.FlownCampaigns;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;

class EvidencePagesTest extends ServerTest {
    private JsonNode demo() {
        return json(get("/api/v1/campaigns/" + FlownCampaigns.DEMO + "/revisions/1"), 200)
                .get("content");
    }

    private List<JsonNode> publish(String name, String flaps, int count) {
        List<JsonNode> all = FlownCampaigns.series(demo(), name, flaps, count);
        all.forEach(document -> shipped("campaigns", document));
        return all;
    }

    /** Address of the group flown with these flaps, which no other test uses. */
    private String group(String flaps) {
        return json(get("/api/v1/evidence"), 200)
                .get("groups")
                .valueStream()
                .map(g -> g.get("key").asString())
                .filter(key -> key.startsWith(flaps + "~"))
                .findFirst()
                .map(key -> "group=" + URLEncoder.encode(key, StandardCharsets.UTF_8))
                .orElseThrow();
    }

    @Test
    void fourCampaignsAreNotSummedUpAndAFifthMakesTheDifference() {
        publish("Four with a notch", "one notch of four", 4);
        String group = group("one notch of four");
        Document four = page("/evidence?" + group, 200);
        assertThat(four.select("#refusal").text())
                .contains("Only 4 comparable campaigns")
                .contains("needs 5");
        assertThat(four.select("#summary")).isEmpty();
        assertThat(json(get("/api/v1/evidence?" + group), 200).get("summary").isNull())
                .isTrue();

        publish("The fifth with a notch", "One  notch of four ", 1);
        Document five = page("/evidence?" + group, 200);
        assertThat(five.select("#refusal")).isEmpty();
        assertThat(five.select("#summary").text()).contains("over 5 campaigns with 1 aircraft.");
        assertThat(five.select("#differences").text()).contains("I²");
        assertThat(five.text()).contains("Hartung and Knapp").doesNotContain("NaN");
        assertThat(five.select("svg.plot").size()).isEqualTo(4);
        assertThat(five.select("#reasons").text()).contains("invented demonstration data");
    }

    @Test
    void theSummaryIsThatOfTheFindingsBesideIt() {
        publish("Half flaps", "half for the sum", 6);
        String group = group("half for the sum");
        JsonNode body = json(get("/api/v1/evidence?limit=200&method=DERSIMONIAN_LAIRD&" + group), 200);
        List<Effect> effects = new ArrayList<>();
        body.get("findings").forEach(f -> {
            assertThat(f.get("counted").asBoolean())
                    .isEqualTo(f.get("flaps").asString().equals("half for the sum"));
            assertThat(f.get("notCountedBecause").isEmpty())
                    .isEqualTo(f.get("counted").asBoolean());
            if (f.get("counted").asBoolean()) {
                JsonNode change = f.get("changePercent");
                effects.add(new Effect(
                        change.get("difference").asDouble(),
                        change.get("standardError").asDouble()));
            }
        });
        assertThat(effects).hasSize(6);
        RandomEffects expected = RandomEffects.of(effects, TauEstimator.DERSIMONIAN_LAIRD, 0.95);
        JsonNode summary = body.get("summary");
        assertThat(summary.get("mean").asDouble()).isCloseTo(expected.mean(), within(1e-9));
        assertThat(summary.get("low").asDouble()).isCloseTo(expected.interval().low(), within(1e-9));
        assertThat(summary.get("tauSquared").asDouble())
                .isCloseTo(expected.heterogeneity().tauSquared(), within(1e-9));
        assertThat(summary.get("campaigns").asInt()).isEqualTo(6);
        assertThat(body.get("unit").asString()).isEqualTo("%");
        JsonNode knots = json(get("/api/v1/evidence?scale=UNIT&" + group), 200);
        assertThat(knots.get("unit").asString()).isEqualTo("kt");
        assertThat(knots.get("summary").get("mean").asDouble()).isBetween(-6.0, -0.5);
    }

    @Test
    void inventedDataNeverStandBesideWhatWasFlown() {
        json(get("/api/v1/evidence?limit=200"), 200).get("groups").forEach(g -> {
            JsonNode body = json(
                    get("/api/v1/evidence?limit=200&group="
                            + URLEncoder.encode(g.get("key").asString(), StandardCharsets.UTF_8)),
                    200);
            List<Boolean> counted = body.get("findings")
                    .valueStream()
                    .filter(f -> f.get("counted").asBoolean())
                    .map(f -> f.get("invented").asBoolean())
                    .distinct()
                    .toList();
            assertThat(counted).hasSizeLessThanOrEqualTo(1);
        });
    }

    @Test
    void everyFindingIsReachedPageByPage() {
        publish("Paged", "paged flaps", 3);
        List<String> seen = new ArrayList<>();
        String cursor = "";
        do {
            JsonNode body = json(get("/api/v1/evidence?limit=2" + cursor), 200);
            body.get("findings")
                    .forEach(f -> seen.add(f.get("campaign").get("slug").asString() + "."
                            + f.get("configuration").asString()));
            cursor = body.path("nextCursor").isString()
                    ? "&cursor=" + body.get("nextCursor").asString()
                    : null;
        } while (cursor != null);
        assertThat(seen).doesNotHaveDuplicates().contains("paged-1.B", "paged-2.B", "paged-3.B");
    }

    @Test
    void theTableIsAFileToo() {
        publish("Tabled", "=flaps for a file", 1);
        String csv = get("/evidence.csv?quantity=STALL_SPEED").body();
        List<String> names = List.of(csv.lines().findFirst().orElseThrow().split(","));
        String line =
                csv.lines().filter(l -> l.startsWith("tabled-1,")).findFirst().orElseThrow();
        assertThat(names).contains("change", "change_percent_standard_error", "not_counted_because");
        assertThat(line).contains("'=flaps for a file").contains("STALL_SPEED");
    }

    @ParameterizedTest
    @ValueSource(strings = {"quantity=LIFT", "scale=%00", "method=GUESS", "quantity=", "group=%E2%80%AE%00"})
    void whateverStandsInTheAddressTheAnswerIsAPage(String query) {
        Document page = page("/evidence?" + query, query.matches("(quantity=|group=.*)") ? 200 : 400);
        assertThat(page.select("h1")).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"quantity=LIFT", "method=GUESS", "scale=KNOTS", "limit=0", "limit=201", "limit=x", "cursor=a"})
    void programsAreToldWhichParameterIsWrong(String query) {
        JsonNode problem = json(get("/api/v1/evidence?" + query), 400);
        assertThat(problem.get("errors").get(0).get("field").asString()).isEqualTo(query.replaceFirst("=.*", ""));
    }

    @Test
    void aGroupThatIsTooLongIsNamed() {
        assertThat(page("/evidence?group=" + "x".repeat(300), 400).text()).contains("at most 200 characters");
    }

    @Test
    void otherQuantitiesSayThatNothingIsThere() {
        assertThat(page("/evidence?quantity=CLIMB_RATE", 200).text())
                .contains("No comparable campaign has been published");
    }
}
