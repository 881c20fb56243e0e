package org.vanewright.platform;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.List;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.ActiveProfiles;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The service over real HTTP: errors, limits, headers and files as callers meet them. */
@SpringBootTest(
        webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT,
        properties = "vanewright.limits.calculations-per-minute=3")
@ActiveProfiles({"test", "probe"})
class ServiceTest {
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    @LocalServerPort
    private int port;

    @Autowired
    private JsonMapper mapper;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{\"parts\":[{},{\"chordMm\":\"wide\"}]} | parts[1].chordMm | wide | a number",
                "{\"name\":\"a\",\"parts\":[{\"chordMm\":1},{\"chordMm\":\"2\"}]} | parts[1].chordMm | 2 | a number",
                "{\"parts\":[{\"chordMm\":1,\"count\":1.5}]} | parts[0].count | 1.5 | a whole number",
                "{\"parts\":[{\"side\":\"INNER\"}]} | parts[0].side | INNER | one of UPPER, LOWER",
                "{\"parts\":[{\"mirrored\":\"yes\"}]} | parts[0].mirrored | yes | true or false",
                "{\"parts\":[{\"mirrored\":1}]} | parts[0].mirrored | 1 | true or false",
                "{\"parts\":[{\"chord\":1}]} | parts[0].chord | not known here | one of chordMm, count, mirrored, side",
                "{\"parts\":{}} | parts | an object | an array",
                "{\"parts\":[7]} | parts[0] | 7 | an object",
                "{\"parts\":[{\"chordMm\":{}}]} | parts[0].chordMm | an object | a number",
                "{\"name\":5} | name | 5 | text",
                "[] | body | an array | an object",
                "{\"parts\":[{\"chordMm\":NaN}]} | parts[0].chordMm | NaN | a number from 1 mm to 5000 mm",
                "{\"parts\":[{\"chordMm\":-Infinity}]} | parts[0].chordMm | -Infinity | a number from 1 mm to 5000 mm",
                "{\"parts\":[{\"chordMm\":1e999}]} | parts[0].chordMm | Infinity | a number from 1 mm to 5000 mm",
                "{\"parts\":[{}]} | parts[0].chordMm | missing | a number from 1 mm to 5000 mm",
                "`` | body | missing | a JSON document (RFC 8259)",
                "null | body | missing | a JSON document (RFC 8259)",
                "{\"name\" | body | not JSON at line 1, column 8 | a JSON document (RFC 8259), each property once",
                "{\"name\":\"a\",\"name\":\"b\"} | body | not JSON at line 1, column 19 | a JSON document (RFC 8259), each property once",
            })
    void unusableJsonNamesFieldValueAndWhatIsAllowed(String body, String field, String value, String allowed)
            throws Exception {
        JsonNode problem = problem(postJson("/api/v1/probe", body), 400);
        JsonNode first = problem.get("errors").get(0);
        assertThat(List.of(first.get("field").asString(), first.get("value").asString()))
                .containsExactly(field, value);
        assertThat(first.get("allowed").asString()).isEqualTo(allowed);
    }

    @Test
    void aReadableBodyComesBack() throws Exception {
        var response = postJson("/api/v1/probe", "{\"name\":\"a\",\"parts\":[{\"chordMm\":1200,\"side\":\"LOWER\"}]}");
        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.body())
                .isEqualTo("{\"name\":\"a\",\"parts\":[{\"chordMm\":1200.0,\"count\":null,\"side\":\"LOWER\","
                        + "\"mirrored\":null}]}");
    }

    @ParameterizedTest
    @CsvSource({"missing, 404", "conflict, 409", "closed, 409", "draft, 404", "other, 500"})
    void failuresOfTheApiAreProblemDocuments(String kind, int status) throws Exception {
        var response = get("/api/v1/probe/fail/" + kind);
        JsonNode problem = problem(response, status);
        assertThat(problem.get("title").asString()).isNotBlank();
        assertThat(response.body()).doesNotContain("secret", "trace");
        if (kind.equals("conflict")) {
            assertThat(problem.at("/current/revision").asInt()).isEqualTo(2);
            assertThat(problem.at("/current/content/name").asString()).isEqualTo("Kite");
        }
        assertThat(problem.has("reference")).isEqualTo(status == 500);
    }

    @ParameterizedTest
    @CsvSource({"missing, 404", "conflict, 409", "closed, 409", "draft, 404", "other, 500"})
    void failuresOfPagesArePages(String kind, int status) throws Exception {
        assertPage(get("/probe/fail/" + kind), status);
    }

    @Test
    void addressesThatNobodyServesAnswerInTheirOwnKind() throws Exception {
        assertThat(problem(get("/api/v1/nothing"), 404).get("title").asString()).isEqualTo("Not found");
        problem(get("/api/v1/calculations/probe"), 405);
        problem(
                send(request("/api/v1/probe")
                        .header("Content-Type", "text/plain")
                        .POST(BodyPublishers.ofString("x"))),
                415);
        problem(
                send(request("/api/v1/probe")
                        .header("Content-Type", "application/json")
                        .header("Accept", "image/png")
                        .POST(BodyPublishers.ofString("{}"))),
                406);
        assertPage(get("/nothing"), 404);
        assertPage(get("/probe/number/word"), 400);
    }

    @Test
    void parametersAreNamed() throws Exception {
        assertThat(problem(get("/api/v1/probe/list"), 400).at("/errors/0/field").asString())
                .isEqualTo("limit");
        JsonNode word = problem(get("/api/v1/probe/list?limit=many"), 400);
        assertThat(word.at("/errors/0/value").asString()).isEqualTo("many");
        assertThat(word.at("/errors/0/allowed").asString()).isEqualTo("a whole number");
    }

    @Test
    void bodiesOverTheLimitAreRefusedWithAndWithoutAnnouncedLength() throws Exception {
        byte[] fits = ("{\"name\":\"" + "x".repeat(256 * 1024 - 11) + "\"}").getBytes(UTF_8);
        byte[] tooLarge = ("{\"name\":\"" + "x".repeat(256 * 1024 - 10) + "\"}").getBytes(UTF_8);
        assertThat(post("/api/v1/probe", BodyPublishers.ofByteArray(fits)).statusCode())
                .isEqualTo(200);
        problem(post("/api/v1/probe", BodyPublishers.ofByteArray(tooLarge)), 413);
        problem(post("/api/v1/probe", BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(tooLarge))), 413);
    }

    @Test
    void aFileOverTheLimitIsRefusedWithWhatIsAllowed() throws Exception {
        for (int size : new int[] {64 * 1024 + 1, 200 * 1024}) {
            assertThat(upload(size).body())
                    .as("left to the section's own check")
                    .isEqualTo(Integer.toString(size));
        }
        for (int size : new int[] {30 * 1024 * 1024, 31 * 1024 * 1024}) {
            var refused = upload(size);
            assertPage(refused, 413);
            assertThat(refused.body()).contains("More was sent than may be sent at once");
        }
    }

    private HttpResponse<String> upload(int size) throws IOException, InterruptedException {
        var form = get("/sign-in");
        String cookie = form.headers().firstValue("Set-Cookie").orElseThrow().split(";", 2)[0];
        String token = Jsoup.parse(form.body()).select("input[name=_csrf]").attr("value");
        String body = "--part\r\nContent-Disposition: form-data; name=\"_csrf\"\r\n\r\n" + token
                + "\r\n--part\r\nContent-Disposition: form-data; name=\"file\"; filename=\"section.dat\"\r\n"
                + "Content-Type: text/plain\r\n\r\n" + "1".repeat(size) + "\r\n--part--\r\n";
        return send(request("/probe/upload")
                .header("Cookie", cookie)
                .header("Content-Type", "multipart/form-data; boundary=part")
                .POST(BodyPublishers.ofString(body)));
    }

    @Test
    void calculationsAreLimitedPerAddress() throws Exception {
        HttpResponse<String> last = postJson("/api/v1/calculations/probe", "{}");
        for (int i = 0; i < 3; i++) {
            last = postJson("/api/v1/calculations/probe", "{}");
        }
        problem(last, 429);
        assertThat(Integer.parseInt(last.headers().firstValue("Retry-After").orElseThrow()))
                .isBetween(1, 21);
        HttpResponse<String> page = get("/bench/atmosphere");
        assertThat(page.statusCode()).isEqualTo(429);
        assertThat(page.headers().firstValue("Retry-After")).isPresent();
        assertThat(Jsoup.parse(page.body()).select("main").text()).contains("from one address");
        assertThat(get("/bench").statusCode()).isEqualTo(200);
    }

    @Test
    void everyAnswerCarriesSecurityHeaders() throws Exception {
        for (String path : List.of("/nothing", "/api/v1/nothing", "/probe/fail/other", "/v3/api-docs")) {
            var headers = get(path).headers();
            assertThat(headers.firstValue("Content-Security-Policy").orElseThrow())
                    .contains("default-src 'self'", "frame-ancestors 'none'")
                    .doesNotContain("unsafe");
            assertThat(headers.firstValue("X-Content-Type-Options")).contains("nosniff");
            assertThat(headers.firstValue("Referrer-Policy")).contains("same-origin");
            assertThat(headers.firstValue("Permissions-Policy")).isPresent();
        }
    }

    @Test
    void filesAreKeptAndAskedForAgain() throws Exception {
        var latest = get("/probe/stations.csv");
        var fixed = get("/probe/stations.csv?revision=2");
        assertThat(latest.headers().firstValue("Cache-Control")).contains("no-cache, public");
        assertThat(fixed.headers().firstValue("Cache-Control")).contains("max-age=31536000, public, immutable");
        assertThat(fixed.headers().firstValue("Content-Disposition"))
                .contains("attachment; filename=\"Kate-s-stations-.csv\"");
        String etag = fixed.headers().firstValue("ETag").orElseThrow();
        assertThat(etag)
                .matches("\"[0-9a-f]{64}\"")
                .isNotEqualTo(latest.headers().firstValue("ETag").orElseThrow());
        var again = send(request("/probe/stations.csv?revision=2").header("If-None-Match", "\"x\", " + etag));
        assertThat(again.statusCode()).isEqualTo(304);
        assertThat(again.body()).isEmpty();
        assertThat(send(request("/probe/stations.csv?revision=2").header("If-None-Match", "\"x\""))
                        .body())
                .isEqualTo("a,b\n");
    }

    @Test
    void theApiDescribesItself() throws Exception {
        var response = get("/v3/api-docs");
        assertThat(response.statusCode()).isEqualTo(200);
        JsonNode document = mapper.readTree(response.body());
        assertThat(document.at("/info/title").asString()).isEqualTo("Vanewright");
        assertThat(document.at("/paths").has("/api/v1/probe")).isTrue();
        assertThat(get("/actuator/health").body()).contains("\"UP\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/probe%2fpage", "/layouts/..%2f..%2fsecret", "/devices/a%5cb"})
    void addressesThatTheServerItselfRefusesAreAnsweredInOurWords(String path) throws Exception {
        HttpResponse<String> page = get(path);
        assertPage(page, 400);
        assertThat(page.headers().firstValue("Content-Security-Policy")).isPresent();
        HttpResponse<String> document = get("/api/v1" + path);
        assertThat(problem(document, 400).get("title").asString()).isEqualTo("Input cannot be used");
        assertThat(document.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
    }

    private JsonNode problem(HttpResponse<String> response, int status) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(status);
        assertThat(response.headers().firstValue("Content-Type")).contains("application/problem+json");
        JsonNode problem = mapper.readTree(response.body());
        assertThat(problem.get("status").asInt()).isEqualTo(status);
        return problem;
    }

    private static void assertPage(HttpResponse<String> response, int status) {
        assertThat(response.statusCode()).isEqualTo(status);
        assertThat(response.headers().firstValue("Content-Type").orElseThrow()).startsWith("text/html");
        assertThat(response.body()).contains("<h1").doesNotContain("secret", "Exception");
        assertThat(response.body().contains("quote reference")).isEqualTo(status == 500);
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return send(request(path));
    }

    private HttpResponse<String> postJson(String path, String body) throws IOException, InterruptedException {
        return post(path, BodyPublishers.ofString(body));
    }

    private HttpResponse<String> post(String path, BodyPublisher body) throws IOException, InterruptedException {
        return send(request(path).header("Content-Type", "application/json").POST(body));
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path));
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return CLIENT.send(request.build(), HttpResponse.BodyHandlers.ofString(UTF_8));
    }
}
