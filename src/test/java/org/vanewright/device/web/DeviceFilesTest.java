package org.vanewright.device.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.Tools;
import org.w3c.dom.Element;

/** The files of a device as slicers and people meet them. */
class DeviceFilesTest extends ServerTest {
    private static final String DEVICE = "/devices/rectangular-vane-8-by-20";

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "rectangular-vane-8-by-20/solid.stl",
                "triangular-vane-10-by-25/solid.stl?revision=1",
                "ogival-pair-on-one-base/solid.stl?undersideRadiusMm=400",
                "rectangular-vane-8-by-20/solid.stl?undersideRadiusMm=-300.5"
            })
    void admeshFindsOnePartAndNothingToRepair(String address) throws Exception {
        HttpResponse<byte[]> response = bytes("/devices/" + address);
        assertThat(response.headers().firstValue("Content-Type")).contains("model/stl");
        String report = Tools.run(
                "admesh", Tools.file(folder, "solid.stl", response.body()).toString());
        assertThat(number(report, "Number of parts")).isEqualTo(1);
        for (String fault : new String[] {
            "Degenerate facets",
            "Edges fixed",
            "Facets removed",
            "Facets added",
            "Facets reversed",
            "Backwards edges",
            "Total disconnected facets"
        }) {
            assertThat(number(report, fault)).as(fault + "\n" + report).isZero();
        }
    }

    @Test
    void aPlateHoldsOneObjectAndAnItemForEveryPiece() throws Exception {
        HttpResponse<byte[]> response =
                bytes(DEVICE + "/plate.3mf?bedWidthMm=220&bedDepthMm=200&count=12&spacingMm=5&revision=1");
        assertThat(response.headers().firstValue("Content-Type")).contains("model/3mf");
        assertThat(response.headers().firstValue("Content-Disposition"))
                .contains("attachment; filename=\"rectangular-vane-8-by-20-r1-plate-1-of-1.3mf\"");
        Map<String, byte[]> parts = unzip(response.body());
        assertThat(parts).containsKeys("[Content_Types].xml", "_rels/.rels", "3D/3dmodel.model");
        Element model = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(parts.getOrDefault("3D/3dmodel.model", new byte[0])))
                .getDocumentElement();
        assertThat(model.getAttribute("unit")).isEqualTo("millimeter");
        assertThat(model.getElementsByTagName("object").getLength()).isEqualTo(1);
        assertThat(model.getElementsByTagName("item").getLength()).isEqualTo(12);
        String sha256 = json(get("/api/v1" + DEVICE + "/revisions/1"), 200)
                .get("sha256")
                .asString();
        assertThat(new String(parts.get("3D/3dmodel.model"), StandardCharsets.UTF_8))
                .contains(sha256);
    }

    @Test
    void manyPiecesTakeSeveralPlatesAndEachHasItsFile() throws Exception {
        String query = "?bedWidthMm=100&bedDepthMm=60&count=40";
        Document page = page(DEVICE + "/plates" + query, 200);
        int plates = page.select(".plates .card").size();
        assertThat(plates).isGreaterThan(1);
        int pieces = 0;
        for (int plate = 1; plate <= plates; plate++) {
            Map<String, byte[]> parts = unzip(
                    bytes(DEVICE + "/plate.3mf" + query + "&plate=" + plate).body());
            String model = new String(parts.get("3D/3dmodel.model"), StandardCharsets.UTF_8);
            pieces += model.split("<item ", -1).length - 1;
        }
        assertThat(pieces).isEqualTo(40);
        assertThat(refusal(DEVICE + "/plate.3mf" + query + "&plate=" + (plates + 1)))
                .contains("plate is " + (plates + 1), "from 1 to " + plates);
    }

    @Test
    void theDrawingIsOnePageOfA4WithTheRevisionAndTheCaution() throws Exception {
        Path pdf =
                Tools.file(folder, "drawing.pdf", bytes(DEVICE + "/drawing.pdf").body());
        Tools.run("qpdf", "--check", pdf.toString());
        assertThat(Tools.run("pdfinfo", pdf.toString()))
                .containsPattern("Pages:\\s+1")
                .contains("841.89 x 595.276");
        String hash =
                json(get("/api/v1" + DEVICE), 200).get("sha256").asString().substring(0, 12);
        assertThat(Tools.run("pdftotext", "-layout", pdf.toString(), "-"))
                .contains("Rectangular vane 8 by 20", "Revision 1", hash, "INVENTED", "Third-angle projection")
                .containsPattern("Scale \\d+:\\d+");
        Path svg =
                Tools.file(folder, "drawing.svg", bytes(DEVICE + "/drawing.svg").body());
        Tools.run("rsvg-convert", "-o", folder.resolve("drawing.png").toString(), svg.toString());
        assertThat(folder.resolve("drawing.png")).isNotEmptyFile();
    }

    @ParameterizedTest
    @ValueSource(strings = {"solid.stl", "solid.3mf", "plate.3mf", "drawing.pdf", "drawing.svg"})
    void filesOfAFixedRevisionLastAndTheLatestIsAskedForAgain(String file) throws Exception {
        HttpResponse<byte[]> fixed = bytes(DEVICE + "/" + file + "?revision=1");
        assertThat(fixed.headers().firstValue("Cache-Control")).contains("max-age=31536000, public, immutable");
        String etag = fixed.headers().firstValue("ETag").orElseThrow();
        assertThat(etag).matches("\"[0-9a-f]{64}\"");
        assertThat(get(DEVICE + "/" + file + "?revision=1", "If-None-Match", etag)
                        .statusCode())
                .isEqualTo(304);
        HttpResponse<byte[]> latest = bytes(DEVICE + "/" + file);
        assertThat(latest.headers().firstValue("Cache-Control")).contains("no-cache, public");
        assertThat(latest.headers().firstValue("ETag")).contains(etag);
        assertThat(latest.body()).isEqualTo(fixed.body());
    }

    @Test
    void everyParameterIsInTheEntityTag() {
        assertThat(Stream.of(
                                "/solid.stl",
                                "/solid.3mf",
                                "/solid.stl?undersideRadiusMm=400",
                                "/solid.stl?undersideRadiusMm=-400",
                                "/plate.3mf?count=3",
                                "/plate.3mf?count=4",
                                "/plate.3mf?count=4&spacingMm=6",
                                "/plate.3mf?count=4&bedWidthMm=180",
                                "/plate.3mf?count=4&bedDepthMm=180")
                        .map(p -> get(DEVICE + p).headers().firstValue("ETag").orElseThrow()))
                .doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "solid.stl?revision=abc | revision is abc",
                "solid.stl?revision=0 | revision is 0",
                "solid.stl?revision=-1 | revision is -1",
                "solid.stl?revision=99999999999999999999 | revision is 9999",
                "solid.stl?undersideRadiusMm=NaN | undersideRadiusMm is NaN",
                "solid.stl?undersideRadiusMm=0 | undersideRadiusMm is 0",
                "solid.stl?undersideRadiusMm=1e400 | undersideRadiusMm is 1e400",
                "solid.stl?undersideRadiusMm=5 | undersideRadiusMm is 5",
                "plate.3mf?count=1000000 | count is 1000000",
                "plate.3mf?count=99999999999 | count is 99999999999",
                "plate.3mf?count=2.5 | count is 2.5",
                "plate.3mf?count=0 | count is 0",
                "plate.3mf?bedWidthMm=0 | bedWidthMm is 0",
                "plate.3mf?bedWidthMm=-5&bedDepthMm=Infinity | bedDepthMm is Infinity",
                "plate.3mf?spacingMm=<script>alert(1)</script> | spacingMm is <script>",
                "plate.3mf?plate=2 | plate is 2",
                "plate.3mf?plate=0 | plate is 0"
            })
    void parametersThatCannotBeUsedAreNamedOnAPage(String address, String said) {
        String path = address.replace("<", "%3C").replace(">", "%3E");
        assertThat(refusal(DEVICE + "/" + path)).contains(said);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/devices/no-such-device/solid.stl",
                "/devices/rectangular-vane-8-by-20/solid.stl?revision=7",
                "/devices/..;/solid.stl",
                "/devices/%2e%2e/solid.stl",
                "/devices/UPPER/solid.stl",
                "/devices/rectangular-vane-8-by-20/solid.obj"
            })
    void whatIsNotThereIsNotFound(String path) {
        assertThat(get(path).statusCode()).as(path).isIn(400, 404);
    }

    private String refusal(String path) {
        Document page = page(path, 400);
        assertThat(page.select("script:not([src]):not([type$=json])")).isEmpty();
        return page.select("main").text();
    }

    private HttpResponse<byte[]> bytes(String path) throws IOException, InterruptedException {
        HttpResponse<byte[]> response = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(origin() + path)).build(),
                        HttpResponse.BodyHandlers.ofByteArray());
        assertThat(response.statusCode()).as(path).isEqualTo(200);
        return response;
    }

    private static Map<String, byte[]> unzip(byte[] file) throws IOException {
        Map<String, byte[]> parts = new HashMap<>();
        try (InputStream in = new ByteArrayInputStream(file);
                ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), zip.readAllBytes());
            }
        }
        return parts;
    }

    private static int number(String report, String name) {
        Matcher m = Pattern.compile(Pattern.quote(name) + "\\s*:\\s*(\\d+)").matcher(report);
        assertThat(m.find()).as("%s in:%n%s", name, report).isTrue();
        return Integer.parseInt(m.group(1));
    }
}
