package org.vanewright.bond.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;

/** The bond check of a layout, as people and programs meet it. */
class BondPagesTest extends ServerTest {
    private static final String LAYOUT = "/layouts/high-wing-one-row-co-rotating";
    private static final String PAIRS = "/layouts/low-wing-pairs-over-the-taper";
    private static final String FOAM = "adhesive=foam-tape-30-pound-pack";

    private JsonNode check(String layout, String query) {
        return json(get("/api/v1" + layout + "/bond?" + query), 200);
    }

    @Test
    void theWorkOfTheCheckCanBeDoneAgainByHand() {
        JsonNode check = check(
                LAYOUT,
                FOAM + "&speedKt=100&loadFactor=2&speedRatio=1&sideslipDeg=0&knockN=10"
                        + "&temperatureFactor=0.5&ageingFactor=1&surfaceFactor=1&baseModulusMPa=500000");
        JsonNode row = check.at("/rows/0");
        double speed = 100 * 1852 / 3600.0;
        double pressure = 1.225 * speed * speed / 2;
        double side = 8 * 20e-6;
        double coefficient = row.get("normalForceCoefficient").asDouble();
        double force = row.at("/air/forceN").asDouble();
        assertThat(row.at("/device/slug").asString()).isEqualTo("rectangular-vane-8-by-20");
        // the demonstration's vane is 8 by 20 mm
        assertThat(force).isCloseTo(2 * pressure * coefficient * side, within(0.02 * force));
        JsonNode across = row.at("/air/ways/0");
        assertThat(across.at("/stress/shearPa").asDouble())
                .isGreaterThanOrEqualTo(force / row.get("areaMm2").asDouble() * 1e6 * 0.99);
        double margin = across.at("/margins/tension").asDouble();
        assertThat(margin)
                .isCloseTo(0.5 * 560e3 / across.at("/stress/peakTensionPa").asDouble(), within(1e-6 * margin));
        // cleavage strength is stated, so it counts and not peel: 30 N/cm
        double edge = across.at("/margins/cleavage").asDouble();
        assertThat(edge)
                .isCloseTo(0.5 * 3000 / across.at("/stress/cleavageNPerM").asDouble(), within(1e-6 * edge));
        assertThat(row.at("/knock/forceN").asDouble()).isEqualTo(10);
        assertThat(check.get("method").asString()).contains("elastic foundation");
        assertThat(check.get("validity").toString()).contains("No margin is an approval");
    }

    @Test
    void aKnockInTheHangarExceedsTheAirAtTheNeverExceedSpeed() {
        JsonNode check = check(LAYOUT, FOAM);
        JsonNode row = check.at("/rows/0");
        assertThat(check.at("/conditions/speedKt").asDouble())
                .isEqualTo(check.at("/conditions/neverExceedKt").asDouble());
        assertThat(row.at("/knock/ways/0/stress/peakTensionPa").asDouble())
                .isGreaterThan(row.at("/air/ways/0/stress/peakTensionPa").asDouble());
        assertThat(row.get("knockAsSpeedKt").asDouble())
                .isGreaterThan(check.at("/conditions/speedKt").asDouble());
        assertThat(row.at("/weakest/kind").asString()).isEqualTo("KNOCK");
        assertThat(row.get("weakestInWords").asString()).contains("by a knock");
    }

    @Test
    void theAirGrowsWithTheSquareOfTheSpeed() {
        JsonNode row = check(LAYOUT, FOAM).at("/rows/0");
        JsonNode speeds = row.get("alongSpeed");
        assertThat(speeds.size()).isGreaterThanOrEqualTo(4);
        double perSquare = Double.NaN;
        double before = 0;
        for (JsonNode at : speeds) {
            double kt = at.get("speedKt").asDouble();
            double ratio = at.at("/air/forceN").asDouble() / (kt * kt);
            assertThat(kt).isGreaterThan(before);
            assertThat(Double.isNaN(perSquare) ? ratio : perSquare).isCloseTo(ratio, within(1e-9 * ratio));
            perSquare = ratio;
            before = kt;
        }
    }

    @Test
    void whatIsNotStatedIsNotJudged() {
        JsonNode row = check(PAIRS, "adhesive=clear-gel-like-tape").at("/rows/0");
        // no cleavage strength is stated: peel takes its place
        JsonNode across = row.at("/air/ways/0");
        double left = 0.5 * 0.5 * 0.7;
        assertThat(across.at("/margins/cleavage").asDouble())
                .isCloseTo(
                        left * 1500 / across.at("/stress/cleavageNPerM").asDouble(),
                        within(1e-6 * across.at("/margins/cleavage").asDouble()));
    }

    @Test
    void thePageNamesTheWeakestModeAndWhatAKnockMeans() {
        Document page = page(LAYOUT + "/bond?" + FOAM, 200);
        assertThat(page.select(".gives-way").text()).contains("Gives way first:", "times what is asked");
        assertThat(page.select(".knock").text()).contains("A knock of 20", "times as hard as the air");
        assertThat(page.text())
                .contains(
                        "What a knock means",
                        "invented",
                        "No margin is an approval",
                        "engineering judgement, no source")
                .doesNotContain("NaN", "Infinity");
        assertThat(page.select("svg.plot")).hasSize(1);
        // 0.5 by heat, 0.5 by age, 0.7 by the surface leave 0.175
        assertThat(page.text()).contains("480 kPa 84 kPa ASTM D1002", "Usually 0.5: engineering judgement, no source");
        assertThat(page.select("#loadFactor").val()).isEqualTo("1.5");
        assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
        assertThat(page(LAYOUT, 200).select("a[href*=/bond]")).isNotEmpty();
        assertThat(page(LAYOUT, 200).select("a[href*=/tape-plan]")).isNotEmpty();
    }

    @Test
    void withoutAnAdhesiveOneIsAskedFor() {
        Document page = page(LAYOUT + "/bond", 200);
        assertThat(page.select("#result")).isEmpty();
        assertThat(page.select("#adhesive option").eachText()).anyMatch(t -> t.contains("Foam tape 30"));
        assertThat(json(get("/api/v1" + LAYOUT + "/bond"), 400)
                        .at("/errors/0/field")
                        .asString())
                .isEqualTo("adhesive");
    }

    @Test
    void beyondTheNeverExceedSpeedThePageSaysSo() {
        assertThat(page(LAYOUT + "/bond?" + FOAM + "&speedKt=300", 200).text()).contains("never a speed to fly");
    }

    @ParameterizedTest
    @CsvSource({
        "speedKt, fast",
        "speedKt, 0",
        "speedKt, 1e9",
        "loadFactor, 0.5",
        "speedRatio, NaN",
        "sideslipDeg, -1",
        "knockN, 0",
        "temperatureFactor, 1.01",
        "ageingFactor, 0",
        "surfaceFactor, -1",
        "baseModulusMPa, 1",
        "tapeModulusKPa, 0",
        "revision, zero",
        "adhesiveRevision, 0",
        "adhesive, no-such-tape",
        "adhesive, <script>"
    })
    void badParametersAreNamedAndKept(String field, String typed) {
        String query = (field.equals("adhesive") ? "" : FOAM + "&") + field + "="
                + URLEncoder.encode(typed, StandardCharsets.UTF_8);
        if (!field.equals("revision")) {
            Document page = page(LAYOUT + "/bond?" + query, 400);
            assertThat(page.select("#result")).isEmpty();
            assertThat(page.select("#form-problems").text()).contains("Must be");
        }
        JsonNode problem = json(get("/api/v1" + LAYOUT + "/bond?" + query), 400);
        assertThat(problem.at("/errors/0/field").asString()).isEqualTo(field);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/layouts/none-such/bond", "/api/v1/layouts/none-such/bond?" + FOAM})
    void unknownLayoutsAreNotFound(String path) {
        assertThat(get(path).statusCode()).isEqualTo(404);
    }
}
