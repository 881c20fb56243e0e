package org.vanewright.bench.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.vanewright.account.Role;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;

/** The OpenAPI document as a program reads it. */
class ApiDescriptionTest extends ServerTest {
    private JsonNode paths() {
        return json(get("/v3/api-docs"), 200).get("paths");
    }

    @Test
    void everyOperationHasASummaryAndEveryBodyAnExample() {
        int operations = 0;
        for (Map.Entry<String, JsonNode> path : paths().properties()) {
            if (path.getKey().contains("/probe")) {
                continue;
            }
            for (Map.Entry<String, JsonNode> operation : path.getValue().properties()) {
                String name = operation.getKey() + " " + path.getKey();
                assertThat(operation.getValue().path("summary").asString(""))
                        .as(name)
                        .isNotBlank();
                JsonNode body = operation.getValue().get("requestBody");
                if (body != null) {
                    assertThat(body.at("/content/application~1json/example").isObject())
                            .as(name)
                            .isTrue();
                }
                operations++;
            }
        }
        assertThat(operations).isGreaterThanOrEqualTo(27);
    }

    @Test
    void theExamplesOfCalculationsAreAccepted() {
        for (String name : new String[] {
            "atmosphere",
            "airspeed",
            "section",
            "flow",
            "flat-plate",
            "vane",
            "unroll",
            "solid",
            "gps-airspeed",
            "stall-reduction",
            "comparison",
            "sample-size"
        }) {
            String path = "/api/v1/calculations/" + name;
            JsonNode example = paths().get(path).at("/post/requestBody/content/application~1json/example");
            assertThat(json(postJson(path, example.toString()), 200)
                            .get("method")
                            .asString())
                    .as(name)
                    .isNotBlank();
        }
    }

    @Test
    void theExamplesOfRecordsAreAccepted() {
        for (String plural : new String[] {"airframes", "devices", "layouts"}) {
            String path = "/api/v1/" + plural;
            JsonNode example = paths().get(path).at("/post/requestBody/content/application~1json/example");
            assertThat(json(postJson(path, example.toString(), "Authorization", bearer(Role.MEMBER)), 201)
                            .get("problems"))
                    .as(plural)
                    .isEmpty();
        }
    }

    @Test
    void saysWhichAnswersAreProblems() {
        JsonNode paths = paths();
        assertThat(paths.at("/~1api~1v1~1devices/post/responses").propertyNames())
                .containsExactlyInAnyOrder("201", "400", "401", "403", "413", "415");
        assertThat(paths.at("/~1api~1v1~1devices~1{slug}~1revisions/post/responses")
                        .propertyNames())
                .contains("201", "404", "409", "412", "428");
        assertThat(paths.at("/~1api~1v1~1calculations~1section/post/responses").propertyNames())
                .contains("200", "400", "429");
    }
}
