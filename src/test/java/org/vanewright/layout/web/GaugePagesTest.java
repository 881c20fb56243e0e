package org.vanewright.layout.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.List;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.mock.web.MockHttpServletRequest;
import org.vanewright.engineering.gauge.GaugeSettings;
import org.vanewright.engineering.gauge.RowGauges;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.Tools;
import tools.jackson.databind.JsonNode;

/** Placing gauges as pages, files and JSON. */
class GaugePagesTest extends ServerTest {
    private static final String HIGH = "/layouts/high-wing-one-row-co-rotating";
    private static final String LOW = "/layouts/low-wing-pairs-over-the-taper";

    @TempDir
    Path directory;

    private byte[] bytes(String path) throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(origin() + path)).build();
        HttpResponse<byte[]> response = HttpClient.newHttpClient().send(request, BodyHandlers.ofByteArray());
        assertThat(response.statusCode()).as(path).isEqualTo(200);
        return response.body();
    }

    @Test
    void thePageListsTheGaugesOfEachRowAndHandWithTheirFiles() throws Exception {
        assertThat(page(HIGH, 200).select("a[href*=/gauges]")).hasSize(1);
        Document page = page(HIGH + "/gauges", 200);
        assertThat(page.select("h2").eachText())
                .contains("Row 1, Whole span: left, upper side", "Row 1, Whole span: right, upper side");
        assertThat(page.select("svg")).hasSizeGreaterThanOrEqualTo(2);
        assertThat(page.text())
                .contains("One gauge serves the row", "Use the template there.", "the measurement decides");
        Element stl = page.expectFirst("a[href*=gauge.stl][href*=side=RIGHT]");
        Path file = Tools.file(directory, "gauge.stl", bytes(stl.attr("href")));
        String report = Tools.run("admesh", file.toString()).replaceAll("\\s+", " ");
        assertThat(report)
                .contains("Number of parts : 1", "Facets added : 0", "Facets removed : 0", "Edges fixed : 0")
                .contains("Facets reversed : 0", "Degenerate facets : 0");
        assertThat(bytes(stl.attr("href"))).as("the same bytes each time").isEqualTo(bytes(stl.attr("href")));
        Path threeMf = Tools.file(directory, "gauge.3mf", bytes(stl.attr("href").replace("gauge.stl", "gauge.3mf")));
        assertThat(Tools.run(
                        "/usr/bin/python3",
                        "-c",
                        "import sys, zipfile; print(zipfile.ZipFile(sys.argv[1]).read('3D/3dmodel.model').decode()[:900])",
                        threeMf.toString()))
                .contains("unit=\"millimeter\"", "Placing gauge, row 1 right, 1 of 1");
    }

    @Test
    void aLargerGapAndPlaceNeedFewerGauges() {
        JsonNode tight = json(get("/api/v1" + LOW + "/gauges?gapMm=0.2&placeMm=1"), 200);
        JsonNode loose = json(get("/api/v1" + LOW + "/gauges?gapMm=1&clearanceMm=1&placeMm=3"), 200);
        assertThat(loose.get("rows").get(2).get("gauges").size())
                .isBetween(1, tight.get("rows").get(2).get("gauges").size() - 1);
        assertThat(tight.get("rows").get(2).get("wing").asString()).isEqualTo("LEFT");
        for (JsonNode gauge : loose.get("rows").get(2).get("gauges")) {
            assertThat(gauge.get("openMm").asDouble()).isBetween(0.0, 1.0);
            assertThat(gauge.get("slots")).hasSize(2);
        }
    }

    @Test
    void tolerancesOpenToTheirInputs() {
        JsonNode table = json(get("/api/v1" + HIGH + "/tolerances"), 200);
        assertThat(table.get("method").asString()).contains("Wendt", "steel rule");
        JsonNode first = table.get("stations").get(0);
        assertThat(first.get("angleDeg").asDouble()).isEqualTo(15);
        JsonNode angle = first.get("tolerance").get("angle");
        assertThat(angle.get("plusMinus").asDouble()).isEqualTo(1.5);
        assertThat(angle.get("basis").asString()).isEqualTo("EFFECT");
        assertThat(first.get("tolerance").get("layerThicknessMm").asDouble()).isBetween(1.0, 10.0);
    }

    @ParameterizedTest
    @CsvSource({
        "gapMm=0, gapMm",
        "gapMm=NaN, gapMm",
        "gapMm=1e400, gapMm",
        "gapMm=%3Cscript%3E, gapMm",
        "clearanceMm=-1, clearanceMm",
        "clearanceMm=Infinity, clearanceMm",
        "placeMm=99, placeMm",
        "thicknessMm=0, thicknessMm",
        "widthMm=1e9, widthMm",
        "wrapMm=x, wrapMm",
        "row=0, row",
        "row=98, row",
        "row=1e3, row",
        "side=UP, side",
        "side=LEFT%00, side",
        "gauge=99, gauge",
        "gauge=0, gauge",
        "gauge=-3, gauge",
        "revision=two, revision"
    })
    void whatIsNotUnderstoodIsNamed(String query, String field) {
        HttpResponse<String> file = get(LOW + "/gauge.stl?" + query, "Accept", "application/json");
        assertThat(file.statusCode()).as(file.body()).isEqualTo(400);
        assertThat(file.body()).contains(field).doesNotContain("<script>");
        HttpResponse<String> shown = get(LOW + "/gauges?" + query, "Accept", "text/html");
        assertThat(shown.statusCode()).isIn(200, 400);
        assertThat(get("/api/v1" + LOW + "/gauges?" + query).statusCode()).isIn(200, 400);
    }

    @Test
    void devicesThatNoHookReachesAreNamedWithTheReason() {
        Document page = page("/layouts/low-wing-underside-of-the-stabiliser/gauges", 200);
        assertThat(page.text())
                .contains("Devices 1 to 5: Row 1, Ahead of the hinge: it lies so far aft that the hook would be")
                .contains("Use the template there.");
    }

    @Test
    void theFileOfARowWithoutAnyGaugeIsRefusedWithItsReason() {
        String reason = "Row 2, Flap: it lies so far aft. Use the template there.";
        RowGauges none = new RowGauges(
                1,
                "Flap",
                Wing.LEFT,
                SurfaceSide.UPPER,
                GaugeSettings.USUAL,
                List.of(),
                List.of(new RowGauges.LeftOut(List.of(1, 2), reason)));
        MockHttpServletRequest request = new MockHttpServletRequest();
        request.setParameter("row", "2");
        assertThatThrownBy(() -> GaugeQuery.of(request).gaugeOf(none))
                .isInstanceOfSatisfying(InvalidInputException.class, e -> {
                    assertThat(e.problems()).hasSize(1);
                    assertThat(e.problems().get(0).field()).isEqualTo("row");
                    assertThat(e.problems().get(0).allowed()).contains(reason);
                });
    }
}
