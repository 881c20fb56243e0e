package org.vanewright.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.vanewright.testing.ServerTest;

/** JSON made to cost more to read than it did to send is refused as any other input that cannot be used. */
class JsonBombsTest extends ServerTest {
    private static final String DEVICE = "/api/v1/calculations/solid";
    private static final String AIR = "/api/v1/calculations/atmosphere";

    static Stream<Arguments> bombs() {
        String deepArrays = "[".repeat(100_000);
        String deepObjects = "{\"a\":".repeat(40_000);
        String digits = "9".repeat(200_000);
        return Stream.of(
                Arguments.of("arrays in arrays", DEVICE, deepArrays),
                Arguments.of("closed arrays in arrays", DEVICE, deepArrays + "]".repeat(100_000)),
                Arguments.of("objects in objects", DEVICE, deepObjects + "1" + "}".repeat(40_000)),
                Arguments.of(
                        "arrays in a known property", DEVICE, "{\"vane\":" + deepArrays + "]".repeat(100_000) + "}"),
                Arguments.of("arrays in a text", DEVICE, "{\"name\":" + deepArrays + "]".repeat(100_000) + "}"),
                Arguments.of(
                        "arrays in an unknown property", DEVICE, "{\"zzz\":" + deepArrays + "]".repeat(100_000) + "}"),
                Arguments.of("arrays for a number", AIR, "{\"altitudeM\":" + deepArrays + "]".repeat(100_000) + "}"),
                Arguments.of("a number of many digits", DEVICE, "{\"densityKgM3\":" + digits + "}"),
                Arguments.of("a fraction of many digits", DEVICE, "{\"densityKgM3\":0." + digits + "}"),
                Arguments.of("a huge exponent", DEVICE, "{\"densityKgM3\":1e999999999}"),
                Arguments.of("an exponent of many digits", DEVICE, "{\"densityKgM3\":1e" + digits + "}"),
                Arguments.of("a long text", DEVICE, "{\"name\":\"" + "a".repeat(200_000) + "\"}"),
                Arguments.of("a long name", DEVICE, "{\"" + "a".repeat(200_000) + "\":1}"),
                Arguments.of("many properties", DEVICE, manyProperties()),
                Arguments.of("a text of escapes", DEVICE, "{\"name\":\"" + "\\u0000".repeat(30_000) + "\"}"));
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
    void isAnsweredWithAProblemOfTheCaller(String name, String path, String body) {
        HttpResponse<String> answer = postJson(path, body);

        assertThat(answer.statusCode()).isEqualTo(400);
        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
        assertThat(answer.body()).as("nothing long comes back").hasSizeLessThan(10_000);
        assertThat(json(answer, 400).get("errors").size()).isPositive();
    }

    @Test
    void theServiceStillAnswersAfterwards() {
        bombs().forEach(bomb -> postJson((String) bomb.get()[1], (String) bomb.get()[2]));

        assertThat(get("/api/v1/devices").statusCode()).isEqualTo(200);
    }
}
