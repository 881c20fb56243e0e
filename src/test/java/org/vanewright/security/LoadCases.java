package org.vanewright.security;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.vanewright.account.Role;
import org.vanewright.testing.RawHttp;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

/** Requests made to cost the service more than their senders. */
abstract class LoadCases extends ServerTest {
    private static final String SOLID = "/api/v1/calculations/solid";
    private static final String AIR = "/api/v1/calculations/atmosphere";
    private static final String NO_DRAFT = "/api/v1/drafts/00000000-0000-0000-0000-000000000000";

    @AfterEach
    void theServiceStillAnswers() {
        assertThat(get("/api/v1/devices").statusCode()).isEqualTo(200);
    }

    static Stream<Arguments> bombs() {
        String deepArrays = "[".repeat(100_000);
        String closed = deepArrays + "]".repeat(100_000);
        String digits = "9".repeat(200_000);
        return Stream.of(
                Arguments.of("arrays in arrays", SOLID, deepArrays),
                Arguments.of("closed arrays in arrays", SOLID, closed),
                Arguments.of("objects in objects", SOLID, "{\"a\":".repeat(40_000) + "1" + "}".repeat(40_000)),
                Arguments.of("arrays in a known property", SOLID, "{\"vane\":" + closed + "}"),
                Arguments.of("arrays in an unknown property", SOLID, "{\"zzz\":" + closed + "}"),
                Arguments.of("arrays for a number", AIR, "{\"altitudeM\":" + closed + "}"),
                Arguments.of("a number of many digits", SOLID, "{\"densityKgM3\":" + digits + "}"),
                Arguments.of("a fraction of many digits", SOLID, "{\"densityKgM3\":0." + digits + "}"),
                Arguments.of("a huge exponent", SOLID, "{\"densityKgM3\":1e999999999}"),
                Arguments.of("an exponent of many digits", SOLID, "{\"densityKgM3\":1e" + digits + "}"),
                Arguments.of("a long text", SOLID, "{\"name\":\"" + "a".repeat(200_000) + "\"}"),
                Arguments.of("a long name", SOLID, "{\"" + "a".repeat(200_000) + "\":1}"),
                Arguments.of("a property twice", SOLID, "{\"densityKgM3\":1,\"densityKgM3\":2}"),
                Arguments.of("many properties", SOLID, manyProperties()),
                Arguments.of("a text of escapes", SOLID, "{\"name\":\"" + "\\u0000".repeat(30_000) + "\"}"));
    }

    private static String manyProperties() {
        StringBuilder json = new StringBuilder("{\"x\":1");
        for (int i = 0; i < 15_000; i++) {
            json.append(",\"p").append(i).append("\":1");
        }
        return json.append('}').toString();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bombs")
    void aJsonBombIsAProblemOfItsSender(String name, String path, String body) {
        HttpResponse<String> answer = postJson(path, body);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
        assertThat(answer.body()).as("nothing long comes back").hasSizeLessThan(10_000);
        assertThat(json(answer, 400).get("errors").size()).isPositive();
    }

    /** Whatever it is called, more than the API takes is not read. */
    @ParameterizedTest
    @CsvSource({
        "POST, /api/v1/devices, application/json",
        "POST, /api/v1/devices, application/x-www-form-urlencoded",
        "POST, /api/v1/devices, text/plain",
        "PUT, " + NO_DRAFT + ", application/json",
        "PUT, " + NO_DRAFT + ", application/x-www-form-urlencoded",
        "PUT, " + NO_DRAFT + ", multipart/form-data; boundary=x",
        "PUT, " + NO_DRAFT + ", text/plain",
        "DELETE, " + NO_DRAFT + ", application/x-www-form-urlencoded",
    })
    void aBodyOverTheLimitOfTheApiIsRefused(String method, String path, String type) {
        String body = "a=" + "b".repeat(300 * 1024);
        HttpResponse<String> answer =
                newVisitor().call(method, path, body, "Content-Type", type, "Authorization", memberBearer());
        assertThat(answer.statusCode()).isEqualTo(413);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
    }

    @Test
    void aDraftIsSavedFromJsonOnly() {
        HttpResponse<String> answer =
                newVisitor().call("PUT", NO_DRAFT, "{}", "Content-Type", "text/plain", "Authorization", memberBearer());
        assertThat(answer.statusCode()).isEqualTo(415);
    }

    @Test
    void aLargeFormIsRefused() {
        SignedIn member = signIn(Role.MEMBER);
        String large = "x".repeat(3 * 1024 * 1024);
        String larger = "x".repeat(31 * 1024 * 1024);
        assertThat(member.postForm("/devices/new", Map.of("name", large)).statusCode())
                .isIn(400, 413);
        assertThat(member.postMultipart("/airframes/new", Map.of("name", larger), Map.of())
                        .statusCode())
                .isEqualTo(413);
        assertThat(member.postMultipart("/airframes/new", Map.of(), Map.of("file", larger))
                        .statusCode())
                .isEqualTo(413);
    }

    @Test
    void aFormOfManyFieldsIsRefused() {
        SignedIn member = signIn(Role.MEMBER);
        Map<String, String> fields = new HashMap<>();
        for (int i = 0; i < 6000; i++) {
            fields.put("field" + i, "");
        }
        assertThat(member.postForm("/devices/new", fields).statusCode()).isIn(400, 413);
        assertThat(member.postMultipart("/airframes/new", fields, Map.of()).statusCode())
                .isIn(400, 413);
    }

    private static final List<String> TAKING_BODIES = List.of(SOLID, "/sign-in", "/devices/new", "/nowhere");

    /** More of them than the server has threads would keep everybody else out. */
    @Test
    void bodiesThatTrickleInAreNotWaitedForLong() throws IOException {
        List<RawHttp> open = new ArrayList<>();
        for (String path : TAKING_BODIES) {
            open.add(begun(path, 100_000));
        }
        int rounds = 0;
        while (!open.isEmpty()) {
            theServiceStillAnswers();
            open.removeIf(raw -> !takesAnotherByte(raw));
            assertThat(++rounds).as("bytes taken, one at a time").isLessThan(50_000);
        }
    }

    /** The server hangs up by itself; who waits in vain here fails after the patience of the connection. */
    @Test
    void bodiesThatNeverComeAreNotWaitedForLong() throws IOException {
        List<RawHttp> open = new ArrayList<>();
        for (String path : TAKING_BODIES) {
            open.add(begun(path, 1000));
        }
        theServiceStillAnswers();
        for (RawHttp raw : open) {
            try (raw) {
                assertThat(raw.answer().status()).isIn(0, 400, 403, 404, 408);
            }
        }
    }

    private RawHttp begun(String path, int announced) throws IOException {
        String type = path.startsWith("/api/") ? "application/json" : "application/x-www-form-urlencoded";
        RawHttp raw = new RawHttp(origin());
        raw.send("POST " + path + " HTTP/1.1\r\nHost: localhost\r\nContent-Type: " + type + "\r\nContent-Length: "
                + announced + "\r\n\r\n{");
        return raw;
    }

    private static boolean takesAnotherByte(RawHttp raw) {
        try {
            raw.send("a");
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    @Test
    void addressesAndHeadersHaveABound() {
        String origin = origin();
        String long1 = "a".repeat(60_000);
        assertThat(RawHttp.ask(origin, "GET /" + long1 + " HTTP/1.1").status()).isIn(400, 414, 431);
        assertThat(RawHttp.ask(origin, "GET / HTTP/1.1", "X-Long: " + long1).status())
                .isIn(400, 431);
        assertThat(RawHttp.ask(origin, "GET / HTTP/1.1", "Cookie: SESSION=" + long1)
                        .status())
                .isIn(400, 431);
        String[] many = Stream.iterate(0, i -> i + 1)
                .limit(500)
                .map(i -> "X-" + i + ": a")
                .toArray(String[]::new);
        assertThat(RawHttp.ask(origin, "GET / HTTP/1.1", many).status()).isIn(400, 431);
    }

    @Test
    void compressedBodiesAreNotUnpacked() {
        HttpResponse<String> answer = postJson(SOLID, "\u001f\b", "Content-Encoding", "gzip");
        assertThat(answer.statusCode()).isIn(400, 415);
    }
}
