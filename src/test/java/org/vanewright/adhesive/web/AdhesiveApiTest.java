package org.vanewright.adhesive.web;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Adhesives as programs meet them. */
class AdhesiveApiTest extends ServerTest {
    private static final String API = "/api/v1/adhesives";
    private static final String DEMO = API + "/foam-tape-30-pound-pack";

    private ObjectNode document(String name) {
        ObjectNode content = (ObjectNode) json(get(DEMO + "/revisions/1"), 200).get("content");
        return content.put("name", name);
    }

    @Test
    void aDemonstrationIsInventedSaysItsOriginsAndHasItsHash() {
        JsonNode content = json(get(DEMO), 200).get("content");
        assertThat(content.get("invented").asBoolean()).isTrue();
        assertThat(content.at("/pack/pounds").asDouble()).isEqualTo(30);
        assertThat(content.at("/peel/method").asString()).isEqualTo("ASTM_D3330");
        assertThat(content.get("provenance")).isNotEmpty();
        assertThat(json(get(DEMO + "/revisions/1/verify"), 200).get("matches").asBoolean())
                .isTrue();
    }

    @Test
    void aDraftIsTakenAndNotPublished() {
        JsonNode draft = json(sendAsMember(API, document("Another foam").toString()), 201);
        assertThat(draft.get("problems")).isEmpty();
        assertThat(get(API + "/another-foam").statusCode()).isEqualTo(404);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "peel | {\"strengthNPerCm\":10,\"method\":\"ISO_4587\"} | peel.method",
                "tensile | {\"strengthKPa\":1e12,\"method\":\"ASTM_D897\"} | tensile.strengthKPa",
                "pack | {} | pack.pounds"
            })
    void whatCannotBeSubmittedIsNamed(String property, String json, String field) {
        ObjectNode document = document("Not quite");
        document.set(property, mapper().readTree(json));
        JsonNode draft = json(sendAsMember(API, document.toString()), 201);
        assertThat(draft.get("problems").toString()).contains("\"" + field + "\"");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{",
                "[]",
                "{\"name\":5}",
                "{\"name\":\"x\",\"carrier\":\"RUBBER\"}",
                "{\"name\":\"x\",\"brand\":\"y\"}",
                "{\"name\":\"x\",\"thicknessMm\":\"thick\"}",
                "{\"name\":\"x\",\"thicknessMm\":NaN}",
                "{\"name\":\"x\",\"peel\":{\"strengthNPerCm\":1e999}}",
                "{\"name\":\"x\",\"peel\":[1,2]}"
            })
    void hostileBodiesAreBadRequests(String body) {
        assertThat(sendAsMember(API, body).statusCode()).as(body).isEqualTo(400);
    }
}
