package org.vanewright.record.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;

class ProvenanceExportTest extends ServerTest {
    private static final String AIRFRAME = "/airframes/quillmere-strut-braced-high-wing/revisions/1";
    private static final String LAYOUT = "/layouts/high-wing-one-row-co-rotating/revisions/1";

    @ParameterizedTest
    @ValueSource(strings = {AIRFRAME, "/api/v1" + AIRFRAME})
    void everyRevisionHasItsProvenanceBesideItsPageAndBesideItsJson(String revision) {
        HttpResponse<String> answer = get(revision + "/provenance.json");
        JsonNode prov = json(answer, 200);
        String id = "rec:" + AIRFRAME.substring(1);

        assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/json");
        assertThat(prov.get("prefix").get("rec").asString()).isEqualTo(origin() + "/");
        assertThat(prov.get("entity").get(id).get("vw:sha256"))
                .isEqualTo(json(get("/api/v1" + AIRFRAME), 200).get("sha256"));
        assertThat(prov.get("entity")
                        .get(id + "#figures/masses.emptyKg")
                        .get("vw:origin")
                        .asString())
                .isEqualTo("MEASURED");
    }

    @Test
    void aLayoutNamesTheRevisionsItBuildsOn() {
        JsonNode entities =
                json(get("/api/v1" + LAYOUT + "/provenance.json"), 200).get("entity");

        assertThat(entities.has("rec:airframes/quillmere-strut-braced-high-wing/revisions/1"))
                .isTrue();
        assertThat(entities.has("rec:devices/rectangular-vane-8-by-20/revisions/1"))
                .isTrue();
    }

    @Test
    void whoHasItAlreadyIsSentNothing() {
        String path = "/api/v1" + AIRFRAME + "/provenance.json";
        String etag = get(path).headers().firstValue("ETag").orElseThrow();

        assertThat(etag).startsWith("\"");
        assertThat(get(path, "If-None-Match", etag).statusCode()).isEqualTo(304);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/airframes/no-such-airframe/revisions/1",
                "/airframes/quillmere-strut-braced-high-wing/revisions/999",
                "/gliders/quillmere-strut-braced-high-wing/revisions/1"
            })
    void whatIsNotThereIsNotFound(String revision) {
        assertThat(get("/api/v1" + revision + "/provenance.json").statusCode()).isEqualTo(404);
        assertThat(get(revision + "/provenance.json").statusCode()).isEqualTo(404);
    }
}
