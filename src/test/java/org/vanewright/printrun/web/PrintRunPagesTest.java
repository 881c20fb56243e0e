package org.vanewright.printrun.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.account.Role;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;
import tools.jackson.databind.JsonNode;

/** Print runs and print plans, as plain requests. */
class PrintRunPagesTest extends ServerTest {
    private static final String PLAN = "/layouts/high-wing-one-row-co-rotating/print-plan";

    private static Map<String, String> fields(Document page) {
        Map<String, String> fields = new LinkedHashMap<>();
        for (Element field : page.expectFirst("form[data-live]").select("input[name], textarea[name], select[name]")) {
            Element chosen = field.selectFirst("option[selected]");
            if (!field.is("[type=checkbox]:not([checked])")) {
                fields.put(
                        field.attr("name"),
                        field.tagName().equals("select") ? chosen == null ? "" : chosen.val() : field.val());
            }
        }
        return fields;
    }

    private static String location(HttpResponse<String> response) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(303);
        return URI.create(response.headers().firstValue("Location").orElseThrow())
                .getPath();
    }

    @Test
    void theDemonstrationRunShowsWhatCameOfIt() {
        Document page = page("/print-runs/sixteen-vanes-for-the-high-wing", 200);
        String text = page.select("main").text();
        assertThat(text)
                .contains("Invented", "16 printed, 14 fit for use", "236 min in all, 14.8 min a piece")
                .contains("5 of 6 within ±0.30 mm", "Student’s t", "Before anything is fitted");
        assertThat(page.select("#heat-title")).hasSize(1);
        assertThat(page("/print-runs", 200).select(".card a").eachAttr("href"))
                .contains("/print-runs/sixteen-vanes-for-the-high-wing");
    }

    @Test
    void aMemberRecordsARunFromALayout() {
        SignedIn member = signIn(Role.MEMBER);
        Map<String, String> fields = fields(member.page("/print-runs/new?layout=high-wing-one-row-co-rotating", 200));
        assertThat(fields).containsEntry("device", "rectangular-vane-8-by-20@1");
        fields.put("name", "Recorded by a test");
        fields.put("printing.on", "2026-05-01");
        fields.put("printing.material", "ASA");
        fields.put("printing.machineClass", "Filament printer");
        fields.put("settings[0].value", "0.2 mm");
        fields.put("settings[1].value", "3 lines");
        fields.put("outcome.minutes", "250");
        fields.put("outcome.defects[2].count", "1");
        fields.put("sample[0].heightMm", "8.1");
        fields.put("sample[1].heightMm", "7.9");
        Document preview = parsed(member.postForm("/print-runs/preview", fields), 200);
        assertThat(preview.text()).contains("15.6 min a piece", "Layer split 1 piece", "2 of 2 within");
        fields.put("action", "save");
        String draft = location(member.postForm("/print-runs/new", fields));
        assertThat(member.page(draft, 200).select("#form-problems li")).isEmpty();
        String path = publishing().publish(member.person(), draft);
        assertThat(page(path, 200).select("main").text()).contains("16 printed, 15 fit for use", "ASA");
        JsonNode json = json(get("/api/v1" + path), 200);
        assertThat(json.get("content")
                        .get("outcome")
                        .get("defects")
                        .get(2)
                        .get("kind")
                        .asString())
                .isEqualTo("LAYER_SPLIT");
    }

    @Test
    void whatCannotBeReadIsKeptAndNamed() {
        SignedIn member = signIn(Role.MEMBER);
        Map<String, String> fields = fields(member.page("/print-runs/new", 200));
        fields.put("name", "Unreadable");
        fields.put("outcome.pieces", "a dozen");
        fields.put("device", "../../etc/passwd");
        fields.put("outcome.defects[0].count", "1.5");
        fields.put("action", "save");
        Document page = parsed(member.postForm("/print-runs/new", fields), 422);
        assertThat(page.select("#outcome-pieces").val()).isEqualTo("a dozen");
        assertThat(page.select("#outcome-pieces-error").text()).contains("a number");
        assertThat(page.select("#outcome-defects-0-count-error").text()).contains("whole number");
        assertThat(page.select("#form-problems a").eachAttr("href")).contains("#device");
        Map<String, String> longer = fields(page);
        longer.put("outcome.pieces", "12");
        longer.put("outcome.defects[0].count", "");
        longer.put("device", "");
        longer.put("action", "add sample");
        Document more = parsed(member.postForm("/print-runs/new", longer), 200);
        assertThat(more.select("input[name^=sample]")).hasSize(20);
    }

    @Test
    void thePlanCountsPiecesPlatesMaterialAndTime() {
        Document page = page(PLAN + "?spares=1&sparesPercent=5&minutesPerPlate=0", 200);
        JsonNode json = json(get("/api/v1" + PLAN + "?spares=1&sparesPercent=5&minutesPerPlate=0"), 200);
        int fitted = json(get("/api/v1/layouts/high-wing-one-row-co-rotating/stations"), 200)
                .get("stations")
                .size();
        int pieces = fitted + 1 + (int) Math.ceil(fitted * 0.05);
        assertThat(json.get("pieces").asInt()).isEqualTo(pieces);
        assertThat(json.get("minutes").asDouble()).isEqualTo(pieces * 15.0);
        assertThat(page.select("main").text()).contains(pieces + " on ", "min a piece", "softening");
        assertThat(page.select("table a").eachAttr("href"))
                .allSatisfy(href -> assertThat(get(href).statusCode()).as(href).isEqualTo(200));
        assertThat(page.select("[style], script:not([src]):not([type$=json])")).isEmpty();
    }

    @Test
    void shapedBasesKeepThePlanWhole() {
        JsonNode plain = json(get("/api/v1" + PLAN), 200);
        JsonNode shaped = json(get("/api/v1" + PLAN + "?shaped=true&watts=120"), 200);
        assertThat(shaped.get("pieces")).isEqualTo(plain.get("pieces"));
        assertThat(shaped.get("batches").get(0).get("undersideRadiusMm").asDouble())
                .isPositive();
        assertThat(shaped.get("energyKWh").asDouble()).isPositive();
        assertThat(plain.has("energyKWh") && !plain.get("energyKWh").isNull()).isFalse();
    }

    @Test
    void aRateReadOffARunFillsThePlan() {
        String link = page(PLAN, 200).select("a[href*=rateKind]").attr("href");
        Document page = page(link, 200);
        assertThat(page.select("#rate").val()).isEqualTo("14.75");
    }

    @ParameterizedTest
    @CsvSource({
        "spares=-1, spares",
        "spares=2.5, spares",
        "sparesPercent=900, sparesPercent",
        "bedWidthMm=55&bedDepthMm=55&spacingMm=0, spacingMm",
        "bedWidthMm=NaN, bedWidthMm",
        "shellMm=0, shellMm",
        "infillPercent=101, infillPercent",
        "rate=0, rate",
        "rateKind=FURLONGS, rateKind",
        "material=<b>, material",
        "absorptance=2, absorptance",
        "airC=1e309, airC",
        "watts=-3, watts",
    })
    void aBadParameterIsNamed(String query, String field) {
        Document page = page(PLAN + "?" + query.replace("<", "%3C").replace(">", "%3E"), 400);
        assertThat(page.select("#form-problems a").eachAttr("href")).contains("#" + field);
        JsonNode problem =
                json(get("/api/v1" + PLAN + "?" + query.replace("<", "%3C").replace(">", "%3E")), 400);
        assertThat(problem.get("errors").findValuesAsString("field")).contains(field);
    }
}
