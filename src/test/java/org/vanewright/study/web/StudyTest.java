package org.vanewright.study.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;

/** Placement studies of the demonstration layouts, as people and programs meet them. */
class StudyTest extends ServerTest {
    private static final String LAYOUT = "/layouts/high-wing-one-row-co-rotating";
    private static final String API = "/api/v1" + LAYOUT + "/study";

    private JsonNode study(String query) {
        return json(get(API + query), 200);
    }

    private static JsonNode row(JsonNode study) {
        return study.at("/surfaces/0/rows/0");
    }

    @Test
    void theStudyBalancesLiftAndWeight() {
        JsonNode study = study("?condition=APPROACH");
        JsonNode surface = study.at("/surfaces/0");
        double speed = study.at("/state/speeds/trueAirspeedKt").asDouble() * 1852 / 3600;
        double pressure = study.at("/state/air/densityKgM3").asDouble() * speed * speed / 2;
        double lift = surface.get("liftCoefficient").asDouble()
                * surface.get("areaM2").asDouble()
                * pressure;

        assertThat(lift).isCloseTo(study.at("/state/massKg").asDouble() * 9.80665, within(1e-6 * lift));
        assertThat(row(study).get("localLift").asDouble()).isBetween(0.2, 2.5);
        assertThat(study.get("method").asString()).contains("lifting line");
        assertThat(study.get("sources")).isNotEmpty();
    }

    @Test
    void aRowIsSeenInTheLayerWhereItStands() {
        JsonNode row = row(study("?condition=CRUISE"));
        JsonNode proportions = row.get("proportions");
        double height = row.at("/row/vane/heightMm").asDouble();

        assertThat(proportions.get("heightToThickness").asDouble())
                .isCloseTo(height / row.at("/layer/thicknessMm").asDouble(), within(1e-9));
        assertThat(proportions.get("pitchToHeight").asDouble())
                .isCloseTo(row.at("/row/pitchMm").asDouble() / height, within(1e-9));
        assertThat(row.at("/layer/thicknessMm").asDouble()).isBetween(0.1, 10.0);
        assertThat(row.at("/circulation/circulationM2S").asDouble()).isPositive();
        assertThat(row.at("/loadAtVne/forceN").asDouble()).isBetween(0.01, 20.0);
        assertThat(row.at("/drag/lowAreaM2").asDouble())
                .isLessThan(row.at("/drag/highAreaM2").asDouble());
        assertThat(row.get("warnings").toString()).contains("extrapolation");
    }

    @Test
    void aRowMovedBackStandsInAThickerLayer() {
        double[] thickness = List.of("0.06", "0.12", "0.3", "0.6").stream()
                .mapToDouble(x -> row(study("?condition=CRUISE&chordFraction=" + x))
                        .at("/layer/thicknessMm")
                        .asDouble())
                .toArray();
        assertThat(thickness).isSorted();
    }

    @Test
    void recommendationsSayHowTheyAreKnownAndDecideNothing() {
        JsonNode guidance = row(study("?condition=CRUISE")).get("guidance");

        assertThat(guidance).isNotEmpty();
        for (JsonNode each : guidance) {
            assertThat(each.at("/recommendation/known").asString())
                    .isIn("READ", "SECOND_HAND", "FROM_MEMORY", "COMMON_PRACTICE");
            assertThat(each.at("/recommendation/arrangement").asString()).isNotEqualTo("PAIRS");
            boolean practice = each.at("/recommendation/known").asString().equals("COMMON_PRACTICE");
            assertThat(each.at("/recommendation/citation").isNull()).isEqualTo(practice);
        }
    }

    @Test
    void aSlowAircraftIsToldWhereTheMethodStops() {
        JsonNode row = row(study("?condition=STALL"));
        if (row.get("beyondClaim").asBoolean()) {
            assertThat(row.at("/flow/liftCoefficient").asDouble())
                    .isLessThan(row.get("localLift").asDouble());
            assertThat(row.get("warnings").toString()).contains("more than the method claims");
        }
        double largest = 0;
        for (JsonNode point : row.at("/polar/points")) {
            if (point.get("claimed").asBoolean()) {
                largest = Math.max(largest, point.get("liftCoefficient").asDouble());
            }
        }
        assertThat(row.at("/flow/liftCoefficient").asDouble()).isLessThanOrEqualTo(largest + 0.02);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/layouts/high-wing-one-row-co-rotating",
                "/layouts/low-wing-pairs-over-the-taper",
                "/layouts/low-wing-underside-of-the-stabiliser"
            })
    void everyDemonstrationLayoutHasAPageWithItsPicturesTablesAndCautions(String layout) {
        for (String condition : new String[] {"STALL", "APPROACH", "CRUISE"}) {
            Document page = page(layout + "/study?condition=" + condition, 200);
            assertThat(page.select("svg.plot[role=img]")).hasSizeGreaterThanOrEqualTo(5);
            assertThat(page.select(".map-key").text()).contains("below 0.2", "above 2");
            assertThat(page.select("svg.section[role=img]")).hasSizeGreaterThanOrEqualTo(2);
            assertThat(page.select(".plot-table tbody tr")).isNotEmpty();
            assertThat(page.select(".guidance tbody tr")).hasSizeGreaterThan(5);
            assertThat(page.select(".along tbody tr")).isNotEmpty();
            assertThat(page.select("input[type=range]:not([hidden])")).isEmpty();
            assertThat(page.text()).contains("approves nothing", "Before anything is fitted", "Invented");
            assertThat(page.select("[style], style, script:not([src]):not([type$=json])"))
                    .isEmpty();
            assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
            assertThat(page.text()).doesNotContain("NaN", "Infinity");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "massKg=99999, massKg",
        "massKg=1, massKg",
        "massKg=NaN, massKg",
        "pressureAltitudeFt=1e999, pressureAltitudeFt",
        "outsideAirTemperatureC=400, outsideAirTemperatureC",
        "condition=FAST, condition",
        "condition=SPEED, calibratedAirspeedKt",
        "condition=SPEED&calibratedAirspeedKt=2, calibratedAirspeedKt",
        "chordFraction=2, chordFraction",
        "heightMm=-1, heightMm",
        "row=-1, row",
        "revision=0, revision"
    })
    void badConditionsAreNamedBesideTheirFieldAndInProblems(String query, String field) {
        JsonNode problem = json(get(API + "?" + query), 400);
        assertThat(problem.at("/errors/0/field").asString()).isEqualTo(field);
        Document page = page(LAYOUT + "/study?" + query, 400);
        assertThat(page.select("#form-problems li").attr("data-field")).isEqualTo(field);
        assertThat(page.select("svg.plot")).isEmpty();
    }

    @Test
    void slowerFlightAsksForMoreLiftAndThickensTheLayerOfEachRow() {
        JsonNode surface = study("?condition=CRUISE").at("/surfaces/0");
        double state = surface.get("liftCoefficient").asDouble();
        JsonNode along = surface.get("alongSpeed");
        JsonNode slow = along.get(0);
        JsonNode fast = along.get(along.size() - 1);

        assertThat(along.size()).isGreaterThanOrEqualTo(5);
        assertThat(fast.get("liftCoefficient").asDouble()).isCloseTo(state, within(1e-9));
        double ratio = fast.get("calibratedAirspeedKt").asDouble()
                / slow.get("calibratedAirspeedKt").asDouble();
        assertThat(slow.get("liftCoefficient").asDouble())
                .as("lift coefficient goes with the inverse square of the speed, but for compressibility")
                .isCloseTo(state * ratio * ratio, within(0.01 * state * ratio * ratio));
        assertThat(slow.at("/rows/0/thicknessMm").asDouble())
                .isGreaterThan(fast.at("/rows/0/thicknessMm").asDouble());
        assertThat(slow.at("/rows/0/reynolds").asDouble())
                .isLessThan(fast.at("/rows/0/reynolds").asDouble());
    }

    @Test
    void theSameIsAnsweredAgainWithoutComputingAndATrialChangesOnlyWhatItTouches() {
        String query = "?condition=APPROACH&massKg=400";
        JsonNode first = study(query);
        assertThat(study(query)).isEqualTo(first);
        JsonNode tried = row(study(query + "&heightMm=12"));
        assertThat(tried.get("flow")).isEqualTo(row(first).get("flow"));
        assertThat(tried.at("/row/vane/heightMm").asDouble()).isEqualTo(12);
        assertThat(row(study("?condition=APPROACH&massKg=380")).get("localLift").asDouble())
                .isLessThan(row(first).get("localLift").asDouble());
    }

    @Test
    void aScriptIsToldWhatIsWrongWithoutAnErrorAndAPersonWithOne() {
        Document live = parsed(get(LAYOUT + "/study?heightMm=x", "HX-Request", "true"), 200);
        assertThat(live.select("#study-result [data-problems] li").attr("data-field"))
                .isEqualTo("heightMm");
        assertThat(page(LAYOUT + "/study?heightMm=x", 400).select("#form-problems li"))
                .hasSize(1);
    }

    @Test
    void aMassAboveTheMaximumIsNeverOffered() {
        String allowed =
                json(get(API + "?massKg=5000"), 400).at("/errors/0/allowed").asString();
        assertThat(allowed).contains("to the maximum of");
    }

    @Test
    void studiesOfWhatIsNotThereAreNotFound() {
        assertThat(get("/layouts/no-such-layout/study").statusCode()).isEqualTo(404);
        assertThat(get(API + "?revision=99").statusCode()).isEqualTo(404);
    }
}
