package org.vanewright.installsheet.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.Tools;
import tools.jackson.databind.JsonNode;

/** The install sheet over HTTP: what it says, and that all of it is on the paper. */
class InstallSheetTest extends ServerTest {
    private static final String LOW = "/layouts/low-wing-pairs-over-the-taper";
    private static final Pattern WORD =
            Pattern.compile("<word xMin=\"([0-9.]+)\" yMin=\"([0-9.]+)\" xMax=\"([0-9.]+)\" yMax=\"([0-9.]+)\"");
    private static final double POINTS_PER_MM = 72 / 25.4;

    @TempDir
    Path directory;

    private Path pdf(String path) throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(origin() + path)).build();
        HttpResponse<byte[]> response = HttpClient.newHttpClient().send(request, BodyHandlers.ofByteArray());
        assertThat(response.statusCode()).as(path).isEqualTo(200);
        return Tools.file(directory, "sheet.pdf", response.body());
    }

    private static String text(Path pdf) {
        return Tools.run("pdftotext", "-layout", pdf.toString(), "-").replaceAll("\\s+", " ");
    }

    @Test
    void itSaysWhatToHaveWhatToDoAndWhatToMeasure() throws Exception {
        Path file = pdf(LOW + "/install-sheet.pdf");
        assertThat(Tools.run("qpdf", "--check", file.toString())).contains("No syntax or stream encoding errors");
        String sha256 = json(get("/api/v1" + LOW), 200).get("sha256").asString().substring(0, 12);
        assertThat(text(file))
                .contains("INVENTED, for demonstration", "SHA-256 " + sha256, "Print run: ____", "page 1 of ")
                .contains("What to have", "Order of work", "Surface", "Placing with the template", "Check list")
                .contains("Stick the tape to each base first", "trim it to the base's outline")
                .contains("edge that the raft left rough with a knife", "skin oil spoils the bond")
                .contains("Common practice, no source", "from its data sheet", "Dwell before flight: ______ h")
                .contains("Left, initials", "Right, initials", "Left against right", "Initials")
                .contains("16.0 ± 1.6 E", "never finer than a steel rule", "For the aircraft's record")
                .contains("no approval of a modification", "operating limitations")
                .doesNotContain("is approved", "increase");
    }

    @Test
    void massAndMomentAgreeWithTheSolidAndTheStations() throws Exception {
        // Ten-digit arithmetic of the test's own: volume from the calculation of the solid, arms from the station
        // table.
        JsonNode device =
                json(get("/api/v1/devices/triangular-vane-10-by-25"), 200).get("content");
        JsonNode stations = json(get("/api/v1" + LOW + "/stations"), 200).get("stations");
        JsonNode panels = json(get("/api/v1/airframes/quillmere-tapered-low-wing"), 200)
                .get("content")
                .get("surfaces")
                .get(0)
                .get("panels");
        double sum = 0;
        int count = 0;
        for (JsonNode s : stations) {
            if (s.get("row").asInt() == 2) {
                JsonNode p = panels.get(s.get("panel").asInt() - 1);
                double from = p.get("innerStationMm").asDouble();
                double share = (s.get("spanStationMm").asDouble() - from)
                        / (p.get("outerStationMm").asDouble() - from);
                double edge = p.get("innerLeadingEdgeMm").asDouble()
                        + share
                                * (p.get("outerLeadingEdgeMm").asDouble()
                                        - p.get("innerLeadingEdgeMm").asDouble());
                sum += edge
                        + s.get("chordMm").asDouble() * s.get("chordFraction").asDouble();
                count++;
            }
        }
        Matcher row = Pattern.compile(
                        "2, Wing (\\d+) \\+ (\\d+) ([0-9.]+) cm³ (\\d+) ([0-9.]+) (\\d+) (\\d+) ([0-9.]+) (\\d+) cm²")
                .matcher(text(pdf(LOW + "/install-sheet.pdf")));
        assertThat(row.find()).isTrue();
        assertThat(Integer.parseInt(row.group(1)) + Integer.parseInt(row.group(2)))
                .isEqualTo(count);
        assertThat(Double.parseDouble(row.group(4)))
                .isEqualTo(device.get("densityKgM3").asDouble());
        double each = Double.parseDouble(row.group(5));
        assertThat(each)
                .isCloseTo(Double.parseDouble(row.group(3)) * Double.parseDouble(row.group(4)) / 1000, within(0.01));
        assertThat(Double.parseDouble(row.group(7))).isCloseTo(sum / count, within(0.6));
        assertThat(Double.parseDouble(row.group(8))).isCloseTo(each * count * sum / count / 1000, within(0.2));
    }

    @ParameterizedTest
    @CsvSource({"A4, 210, 297", "LETTER, 215.9, 279.4", "A3, 297, 420"})
    void everyWordIsInsideTheMargins(String paper, double widthMm, double heightMm) throws Exception {
        for (String layout : new String[] {LOW, "/layouts/low-wing-underside-of-the-stabiliser"}) {
            String boxes = Tools.run(
                    "pdftotext",
                    "-bbox",
                    pdf(layout + "/install-sheet.pdf?paper=" + paper).toString(),
                    "-");
            Matcher word = WORD.matcher(boxes);
            int words = 0;
            while (word.find()) {
                assertThat(Double.parseDouble(word.group(1))).as(word.group()).isGreaterThan(13 * POINTS_PER_MM);
                assertThat(Double.parseDouble(word.group(2))).as(word.group()).isGreaterThan(12 * POINTS_PER_MM);
                assertThat(Double.parseDouble(word.group(3)))
                        .as(word.group())
                        .isLessThan((widthMm - 13) * POINTS_PER_MM);
                assertThat(Double.parseDouble(word.group(4)))
                        .as(word.group())
                        .isLessThan((heightMm - 10) * POINTS_PER_MM);
                words++;
            }
            assertThat(words).isGreaterThan(600);
        }
    }

    @Test
    void tapeAndPrintRunFillInWhatTheyState() throws Exception {
        String sheet = text(
                pdf(LOW + "/install-sheet.pdf?adhesive=foam-tape-30-pound-pack&run=sixteen-vanes-for-the-high-wing"));
        assertThat(sheet)
                .contains("Foam tape 30 pound pack, revision 1, 1.1 mm thick (INVENTED, for demonstration)")
                .contains("application: from 10 °C to 38 °C", "Dwell before flight: 72 h", "from −35 °C to 90 °C")
                .contains("the data sheet of the tape at hand decides", "Print run: ")
                .doesNotContain("Heavy duty", "Print run: ____");
        String run = json(get("/api/v1/print-runs/sixteen-vanes-for-the-high-wing"), 200)
                .get("content")
                .get("name")
                .asString();
        assertThat(sheet).contains("Print run: " + run + ", revision 1");
    }

    @Test
    void thePageOffersTapesAndTheRunsOfItsDevices() {
        Document high = page("/layouts/high-wing-one-row-co-rotating/install-sheet", 200);
        assertThat(high.select("select[name=adhesive] option").eachAttr("value"))
                .contains("", "foam-tape-30-pound-pack");
        assertThat(high.select("select[name=run] option").eachAttr("value"))
                .contains("", "sixteen-vanes-for-the-high-wing");
        assertThat(page(LOW + "/install-sheet", 200)
                        .select("select[name=run] option")
                        .eachAttr("value"))
                .doesNotContain("sixteen-vanes-for-the-high-wing");
        assertThat(high.select("form[action$=install-sheet.pdf]")).hasSize(1);
        assertThat(high.text()).contains("Mass of a device", "no approval");
        assertThat(page("/layouts/high-wing-one-row-co-rotating", 200).select("a[href*=/install-sheet]"))
                .hasSize(1);
    }

    @Test
    void oneWingIsMeasuredAlone() throws Exception {
        assertThat(text(pdf(LOW + "/install-sheet.pdf?side=LEFT")))
                .contains("LEFT wing", "1 L 1")
                .doesNotContain("1 R 1");
    }

    @ParameterizedTest
    @CsvSource({
        "side=UP, side",
        "side=LEFT%00, side",
        "paper=ROLL, paper",
        "paper=B5, paper",
        "adhesive=nowhere, adhesive",
        "adhesive=..%2f..%2fetc, adhesive",
        "adhesive=%3Cscript%3E, adhesive",
        "run=nowhere, run",
        "run=%00, run",
        "run=a%0Ab, run",
        "revision=0, revision",
        "revision=-1, revision",
        "revision=1e9, revision",
        "adhesiveRevision=x, adhesiveRevision"
    })
    void whatIsNotUnderstoodIsNamed(String query, String field) {
        HttpResponse<String> response = get(LOW + "/install-sheet.pdf?" + query, "Accept", "application/json");
        assertThat(response.statusCode()).as(response.body()).isEqualTo(400);
        assertThat(response.body()).contains(field);
        assertThat(get(LOW + "/install-sheet.pdf?" + query, "Accept", "text/html")
                        .statusCode())
                .isEqualTo(400);
    }
}
