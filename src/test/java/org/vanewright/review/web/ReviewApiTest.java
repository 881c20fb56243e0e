package org.vanewright.review.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.testing.ServerTest;

/** The API of reviews, as a visitor sees it. */
class ReviewApiTest extends ServerTest {
    @ParameterizedTest
    @ValueSource(strings = {"claim", "release", "return", "publish", "withdraw", "remarks"})
    void aVisitorTakesNoStep(String step) {
        var response =
                postJson("/api/v1/review/devices/rectangular-vane-8-by-20/1/" + step, "{\"reason\":\"no\",\"text\":\"no\"}"
                        .replace(step.equals("remarks") ? "\"reason\":\"no\"," : ",\"text\":\"no\"", ""));
        if (step.equals("claim")) {
            response = postJson("/api/v1/review/devices/rectangular-vane-8-by-20/1/claim", "{}");
        }
        assertThat(json(response, 401).get("title").asString()).isEqualTo("Sign in first");
        assertThat(json(get("/api/v1/review"), 401).get("status").asInt()).isEqualTo(401);
    }
}
