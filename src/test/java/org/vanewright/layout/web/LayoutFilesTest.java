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
import java.util.stream.StreamSupport;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.Tools;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Template and station files over HTTP. */
class LayoutFilesTest extends ServerTest {
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

    private static List<String> fields(JsonNode problem) {
        return StreamSupport.stream(problem.get("errors").spliterator(), false)
                .map(e -> e.get("field").asString())
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "A4, '', LEFT",
        "A3, '', RIGHT",
        "LETTER, '', LEFT",
        "TABLOID, '', RIGHT",
        "ROLL, &rollWidthMm=610, LEFT",
        "a4, '', right"
    })
    void theTemplateIsASoundPdfOnEveryPaper(String paper, String more, String side) throws Exception {
        byte[] pdf = bytes(LOW + "/template.pdf?paper=" + paper + more + "&side=" + side);
        Path file = Tools.file(directory, "template.pdf", pdf);
        assertThat(Tools.run("qpdf", "--check", file.toString())).contains("No syntax or stream encoding errors");
        assertThat(Tools.run("pdffonts", file.toString()).lines().skip(2))
                .isNotEmpty()
                .allMatch(font -> font.matches("[A-Z]{6}\\+.* yes yes +yes .*"));
        String revision =
                json(get("/api/v1" + LOW), 200).get("sha256").asString().substring(0, 12);
        assertThat(Tools.run("pdftotext", "-layout", file.toString(), "-"))
                .contains(side.toUpperCase(java.util.Locale.ROOT) + " WING", "UPPER SIDE", "Measure before use")
                .contains("SHA-256 " + revision)
                .contains("stall warning", "100 mm", "4 inches");
        assertThat(bytes(LOW + "/template.pdf?paper=" + paper + more + "&side=" + side))
                .isEqualTo(pdf);
    }

    @Test
    void oneRowAndTheStripCanBeAskedFor() throws Exception {
        Path one = Tools.file(directory, "one.pdf", bytes(LOW + "/template.pdf?row=2&side=LEFT"));
        assertThat(Tools.run("pdftotext", one.toString(), "-"))
                .contains("ROW 2")
                .doesNotContain("ROW 1");
        Path strip = Tools.file(directory, "strip.pdf", bytes(HIGH + "/template.pdf?pattern=STRIP"));
        assertThat(Tools.run("pdftotext", strip.toString(), "-")).contains("strip", "Pitch 60 mm");
        assertThat(Tools.run("pdfinfo", strip.toString())).containsPattern("Pages: +[23]\n");
    }

    @ParameterizedTest
    @CsvSource({
        "paper=B5, paper",
        "side=UP, side",
        "side=LEFT%00, side",
        "pattern=WAVES, pattern",
        "paper=ROLL, rollWidthMm",
        "paper=ROLL&rollWidthMm=, rollWidthMm",
        "paper=ROLL&rollWidthMm=NaN, rollWidthMm",
        "paper=ROLL&rollWidthMm=Infinity, rollWidthMm",
        "paper=ROLL&rollWidthMm=1e9, rollWidthMm",
        "paper=ROLL&rollWidthMm=-610, rollWidthMm",
        "paper=ROLL&rollWidthMm=wide, rollWidthMm",
        "row=0, row",
        "row=99, row",
        "row=abc, row",
        "row=-1, row",
        "row=1e3, row",
        "pattern=STRIP&row=2, row",
        "revision=two, revision"
    })
    void aParameterThatIsNotUnderstoodIsNamed(String query, String field) {
        HttpResponse<String> response = get(LOW + "/template.pdf?" + query, "Accept", "application/json");
        assertThat(response.statusCode()).as(response.body()).isEqualTo(400);
        assertThat(response.body()).contains(field);
        assertThat(get(LOW + "/template.pdf?" + query, "Accept", "text/html").statusCode())
                .isEqualTo(400);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/template.pdf?revision=99",
                "/template.svg?revision=0",
                "/template.dxf?revision=-1",
                "/stations.csv?revision=1000000"
            })
    void arevisionThatDoesNotExistIsNotFound(String file) {
        assertThat(get(LOW + file).statusCode()).isEqualTo(404);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/layouts/nowhere/template.pdf",
                "/layouts/..%2f..%2fetc/template.pdf",
                "/layouts/%2e%2e/template.svg",
                "/layouts/UP/stations.csv",
                "/layouts/a%00/template.dxf"
            })
    void slugsThatClimbOrLeadNowhereFindNothing(String path) {
        assertThat(get(path).statusCode()).isIn(400, 404);
    }

    @Test
    void aStripOfATaperedRowIsRefusedWithAReason() {
        HttpResponse<String> response = get(
                "/layouts/low-wing-underside-of-the-stabiliser/template.svg?pattern=STRIP",
                "Accept",
                "application/json");
        assertThat(response.statusCode()).isEqualTo(400);
        assertThat(response.body()).contains("constant-chord panel");
    }

    @Test
    void theCuttersFilesAreSound() throws Exception {
        Path svg = Tools.file(directory, "t.svg", bytes(LOW + "/template.svg?side=RIGHT"));
        Tools.run("xmllint", "--noout", svg.toString());
        Tools.run("rsvg-convert", "-d", "25.4", "-p", "25.4", svg.toString(), "-o", directory + "/t.png");
        Path dxf = Tools.file(directory, "t.dxf", bytes(LOW + "/template.dxf?side=RIGHT"));
        assertThat(Tools.run(
                        "/usr/bin/python3",
                        "-c",
                        "import sys, ezdxf; d = ezdxf.readfile(sys.argv[1]); a = d.audit(); print(d.dxfversion,"
                                + " len(a.errors), len(a.fixes), *sorted({e.dxf.layer for e in d.modelspace()}))",
                        dxf.toString()))
                .contains("AC1009 0 0 CUT FOLD MARK TEXT");
        HttpResponse<String> response = get(LOW + "/template.dxf?revision=1");
        assertThat(response.headers().firstValue("Content-Disposition").orElseThrow())
                .contains("attachment", "low-wing-pairs-over-the-taper-r1-template-left-mm.dxf");
        assertThat(get(LOW + "/template.svg").headers().firstValue("Content-Type"))
                .contains("image/svg+xml;charset=UTF-8");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"/template.pdf?paper=A4", "/template.svg?side=LEFT", "/template.dxf?row=1", "/stations.csv?"})
    void filesCarryStrongTagsAndLastAtAFixedRevision(String file) {
        HttpResponse<String> latest = get(HIGH + file);
        String etag = latest.headers().firstValue("ETag").orElseThrow();
        assertThat(etag).startsWith("\"");
        assertThat(latest.headers().firstValue("Cache-Control").orElseThrow()).contains("no-cache");
        assertThat(get(HIGH + file, "If-None-Match", etag).statusCode()).isEqualTo(304);
        HttpResponse<String> fixed = get(HIGH + file + "&revision=1");
        assertThat(fixed.headers().firstValue("ETag")).contains(etag);
        assertThat(fixed.headers().firstValue("Cache-Control").orElseThrow()).contains("immutable", "max-age");
        assertThat(fixed.body()).isEqualTo(latest.body());
        assertThat(get(HIGH + "/template.svg?side=RIGHT").headers().firstValue("ETag"))
                .isNotEqualTo(latest.headers().firstValue("ETag"));
    }

    @Test
    void theStationTableAsCsvSaysTheSameAsJson() throws Exception {
        List<CSVRecord> rows;
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(get(LOW + "/stations.csv").body(), format)) {
            assertThat(parser.getHeaderNames())
                    .containsExactly(
                            "surface",
                            "wing",
                            "device",
                            "row",
                            "row_name",
                            "side",
                            "panel",
                            "span_station_mm",
                            "chord_mm",
                            "chord_fraction",
                            "arc_from_leading_edge_mm",
                            "angle_deg",
                            "hand",
                            "skin_radius_mm",
                            "moved");
            rows = parser.getRecords();
        }
        JsonNode stations = json(get("/api/v1" + LOW + "/stations"), 200).get("stations");
        assertThat(rows).hasSize(stations.size());
        for (int i = 0; i < rows.size(); i++) {
            CSVRecord csv = rows.get(i);
            JsonNode node = stations.get(i);
            assertThat(csv.get("wing")).isEqualTo(node.get("wing").asString());
            assertThat(csv.get("device")).isEqualTo(node.get("device").toString());
            assertThat(csv.get("hand")).isEqualTo(node.get("hand").asString());
            assertThat(Math.abs(Double.parseDouble(csv.get("arc_from_leading_edge_mm"))
                            - node.get("arcFromLeadingEdgeMm").asDouble()))
                    .isLessThan(0.0051);
        }
    }

    @Test
    void hostileNamesStayHarmlessInEveryFile() throws Exception {
        ObjectNode document = (ObjectNode) json(get("/api/v1" + HIGH), 200).get("content");
        document.put("invented", false).put("name", "<script>alert(1)</script>)Tj (x \u0007\u202E");
        ((ObjectNode) document.get("rows").get(0)).put("name", "=HYPERLINK(\"http://evil.example\",\"x\")");
        assertThatThrownBy(() -> shipped("layouts", document))
                .isInstanceOfSatisfying(
                        InvalidInputException.class,
                        e -> assertThat(e.problems())
                                .extracting(FieldProblem::field)
                                .contains("name"));
        document.put("name", "<script>alert(1)</script>)Tj (x");
        String slug = shipped("layouts", document).replace("/layouts/", "");
        assertThat(slug).matches("[a-z0-9-]+");
        Path svg = Tools.file(directory, "h.svg", bytes("/layouts/" + slug + "/template.svg"));
        Tools.run("xmllint", "--noout", svg.toString());
        assertThat(get("/layouts/" + slug + "/template.svg").body())
                .doesNotContain("<script")
                .contains("&lt;script&gt;");
        Path pdf = Tools.file(directory, "h.pdf", bytes("/layouts/" + slug + "/template.pdf"));
        assertThat(Tools.run("qpdf", "--check", pdf.toString())).contains("No syntax or stream encoding errors");
        assertThat(Tools.run("pdftotext", pdf.toString(), "-")).contains("<script>alert(1)</script>)Tj (x");
        assertThat(get("/layouts/" + slug + "/stations.csv").body().lines().skip(1))
                .isNotEmpty()
                .allMatch(line -> line.contains(",\"'=HYPERLINK("));
    }
}
