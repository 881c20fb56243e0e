package org.vanewright.layout.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.Role;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Layouts as programs meet them. */
class LayoutApiTest extends ServerTest {
    private static final String API = "/api/v1/layouts";
    private static final String DEMO = API + "/low-wing-pairs-over-the-taper";

    private ObjectNode document(String name) {
        ObjectNode content = (ObjectNode) json(get(DEMO + "/revisions/1"), 200).get("content");
        return content.put("name", name).put("invented", false);
    }

    private static ObjectNode row(ObjectNode document, int index) {
        return (ObjectNode) document.get("rows").get(index);
    }

    private static List<String> fields(JsonNode problem) {
        return StreamSupport.stream(problem.get("errors").spliterator(), false)
                .map(e -> e.get("field").asString())
                .toList();
    }

    private List<String> refused(ObjectNode document) {
        return StreamSupport.stream(
                        json(sendAsMember(API, document.toString()), 201)
                                .get("problems")
                                .spliterator(),
                        false)
                .map(p -> p.get("field").asString())
                .toList();
    }

    @Test
    void aNewDraftIsFoundByItsOwnerAtTheAddressItIsGiven() {
        HttpResponse<String> created = sendAsMember(API, document("Found again").toString());
        assertThat(created.statusCode()).as(created.body()).isEqualTo(201);
        String location = created.headers().firstValue("Location").orElseThrow();
        assertThat(location).contains("/api/v1/drafts/");
        String path = URI.create(location).getPath();
        HttpResponse<String> found = get(path, "Authorization", memberBearer());
        assertThat(json(found, 200)).isEqualTo(mapper().readTree(created.body()));
        assertThat(found.headers().firstValue("Cache-Control").orElseThrow()).contains("no-store");
        assertThat(json(found, 200).get("problems")).isEmpty();
        assertThat(get(path).statusCode()).isEqualTo(401);
        assertThat(get(path, "Authorization", bearer(Role.MEMBER)).statusCode()).isEqualTo(404);
        assertThat(get(API + "/found-again").statusCode()).as("not public").isEqualTo(404);
    }

    @Test
    void whetherItIsInventedMayBeLeftOut() {
        ObjectNode document = document("A real one by a program");
        document.remove("invented");
        assertThat(json(sendAsMember(API, document.toString()), 201)
                        .get("content")
                        .get("invented")
                        .asBoolean())
                .isFalse();
    }

    @Test
    void aDraftOfTheNextRevisionNeedsTheTagOfTheOneItChanges() {
        String slug = shipped("layouts", document("To be revised")).replace("/layouts/", "");
        String etag = get(API + "/" + slug).headers().firstValue("ETag").orElseThrow();
        String revisions = API + "/" + slug + "/revisions";
        String changed =
                document("To be revised").put("description", "Changed.").toString();
        assertThat(postJson(revisions, changed, "If-Match", etag).statusCode()).isEqualTo(401);
        assertThat(json(sendAsMember(revisions, changed), 428).get("detail").asString())
                .contains("If-Match");
        assertThat(sendAsMember(revisions, changed, "If-Match", "\"9-abc\"").statusCode())
                .isEqualTo(412);
        JsonNode draft = json(sendAsMember(revisions, changed, "If-Match", etag), 201);
        assertThat(draft.at("/base/revision").asInt()).isEqualTo(1);
        assertThat(sendAsMember(revisions, changed, "If-Match", etag).statusCode())
                .as("an unfinished one is not overwritten")
                .isEqualTo(409);
        assertThat(json(get(revisions), 200)).hasSize(1);
    }

    @Test
    void theHashIsComputedAgain() {
        JsonNode verified = json(get(DEMO + "/revisions/1/verify"), 200);
        assertThat(verified.get("matches").asBoolean()).isTrue();
        assertThat(verified.get("sha256"))
                .isEqualTo(json(get(DEMO + "/revisions/1"), 200).get("sha256"));
    }

    @Test
    void aFixedRevisionCarriesAStrongTagThatSavesSendingItAgain() {
        String etag = get(DEMO + "/revisions/1").headers().firstValue("ETag").orElseThrow();
        assertThat(etag).startsWith("\"");
        assertThat(get(DEMO + "/revisions/1", "If-None-Match", etag).statusCode())
                .isEqualTo(304);
    }

    @Test
    void theStationTableNumbersEachWingFromTheRootAndIsSymmetric() {
        JsonNode table = json(get(DEMO + "/revisions/1/stations"), 200);
        assertThat(table).isEqualTo(json(get(DEMO + "/stations"), 200));
        assertThat(table.get("method").asString()).contains("toe-in positive", "skin");
        List<JsonNode> left = stations(table, "LEFT");
        List<JsonNode> right = stations(table, "RIGHT");
        assertThat(left).hasSameSizeAs(right).hasSizeGreaterThan(40);
        for (int i = 0; i < left.size(); i++) {
            assertThat(left.get(i).get("device").asInt()).isEqualTo(i + 1);
            for (String same : List.of("spanStationMm", "arcFromLeadingEdgeMm", "angleDeg", "hand", "chordFraction")) {
                assertThat(left.get(i).get(same)).isEqualTo(right.get(i).get(same));
            }
            if (i > 0) {
                assertThat(left.get(i).get("spanStationMm").asDouble())
                        .isGreaterThan(left.get(i - 1).get("spanStationMm").asDouble());
            }
        }
    }

    private static List<JsonNode> stations(JsonNode table, String wing) {
        return StreamSupport.stream(table.get("stations").spliterator(), false)
                .filter(s -> s.get("wing").asString().equals(wing))
                .toList();
    }

    @Test
    void everyProblemIsNamedWithItsField() {
        ObjectNode document = document(" ");
        row(document, 0).put("pitchMm", -1).put("chordFraction", 1.5).putNull("side");
        row(document, 1).put("arcDistanceMm", 100).put("angleDeg", 90);
        assertThat(refused(document))
                .containsExactlyInAnyOrder(
                        "name",
                        "rows[0].pitchMm",
                        "rows[0].chordFraction",
                        "rows[0].side",
                        "rows[1].arcDistanceMm",
                        "rows[1].angleDeg");
    }

    @Test
    void whatDoesNotExistOrFitIsNamedWithItsField() {
        ObjectNode document = document("Wrong places");
        row(document, 0).put("surface", "Third wing");
        ((ObjectNode) row(document, 1).get("device")).put("revision", 77);
        assertThat(refused(document)).containsExactlyInAnyOrder("rows[0].surface", "rows[1].device");

        document = document("Crowded");
        row(document, 0).put("pitchMm", 20);
        assertThat(refused(document)).containsExactly("rows[0].pitchMm");

        document = document("Twice the same row");
        row(document, 1).setAll(row(document, 0));
        assertThat(refused(document)).contains("rows[1]");

        document = document("Beyond the tip");
        row(document, 1).put("toMm", 29_000);
        assertThat(refused(document)).containsExactly("rows[1].toMm");

        document = document("Through the bases");
        row(document, 1).put("register", "SPAR_LINE").put("registerChordFraction", 0.091);
        assertThat(refused(document)).containsExactly("rows[1].registerChordFraction");
    }

    @Test
    void millionsOfDevicesAreRefusedAtOnce() {
        ObjectNode document = document("Millions");
        row(document, 1).put("pitchMm", 1);
        assertThat(refused(document)).isNotEmpty().allMatch(f -> f.startsWith("rows[1].pitchMm"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{\"name\":\"x\",\"wings\":1} | wings",
                "{\"name\":\"x\",\"airframe\":{\"slug\":\"a\",\"revision\":1.5},\"rows\":[]} | airframe.revision",
                "{\"name\":\"x\",\"airframe\":{\"slug\":\"a\",\"revision\":99999999999}} | airframe.revision",
                "{\"name\":\"x\",\"airframe\":\"a@1\",\"rows\":[]} | airframe",
                "{\"name\":\"x\",\"rows\":[{\"pitchMm\":NaN}]} | rows[0].pitchMm",
                "{\"name\":\"x\",\"rows\":[{\"pitchMm\":1e999}]} | rows[0].pitchMm",
                "{\"name\":\"x\",\"rows\":[{\"pitchMm\":\"60\"}]} | rows[0].pitchMm",
                "{\"name\":\"x\",\"rows\":[{\"side\":\"TOP\"}]} | rows[0].side",
                "{\"name\":\"x\",\"rows\":[{\"colour\":\"red\"}]} | rows[0].colour",
                "{\"name\":\"x\",\"rows\":[7]} | rows[0]",
                "{\"name\":\"x\",\"rows\":{}} | rows",
                "{\"name\":5} | name",
                "[] | body",
                "null | body",
                "{\"name\": | body"
            })
    void hostileDocumentsAreBadInputAndNameTheField(String body, String field) {
        assertThat(fields(json(sendAsMember(API, body), 400))).contains(field);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/nowhere",
                "/..%2f..%2fetc%2fpasswd",
                "/%00",
                "/a'%20or%201=1",
                "/nowhere/revisions",
                "/nowhere/stations",
                "/low-wing-pairs-over-the-taper/revisions/99",
                "/low-wing-pairs-over-the-taper/revisions/99/stations",
                "/low-wing-pairs-over-the-taper/revisions/0/verify",
                "/low-wing-pairs-over-the-taper/revisions/-1",
                "/low-wing-pairs-over-the-taper/revisions/two/stations"
            })
    void whatIsNotThereIsNotFoundOrRefused(String path) {
        assertThat(get(API + path).statusCode()).isIn(400, 404);
    }

    @Test
    void aFinCarriesItsRowOnceAndAMirroredOneIsRefused() {
        ObjectNode airframe = (ObjectNode)
                json(get("/api/v1/airframes/quillmere-tapered-low-wing"), 200).get("content");
        airframe.put("name", "With a fin");
        ObjectNode fin = ((ObjectNode) airframe.get("surfaces").get(1)).deepCopy();
        fin.put("kind", "FIN").put("name", "Fin of the test").remove("keepOuts");
        airframe.withArray("surfaces").add(fin);
        shipped("airframes", airframe);

        ObjectNode document = document("On a fin");
        ((ObjectNode) document.get("airframe")).put("slug", "with-a-fin");
        document.withArray("rows").remove(1);
        double inner = fin.get("panels").get(0).get("innerStationMm").asDouble();
        row(document, 0)
                .put("surface", "Fin of the test")
                .put("fromMm", inner + 200)
                .put("toMm", inner + 600)
                .put("chordFraction", 0.3);
        assertThat(refused(document)).containsExactly("rows[0].wings");
        row(document, 0).putNull("wings");
        assertThat(shipped("layouts", document)).isEqualTo("/layouts/on-a-fin");
        JsonNode table = json(get(API + "/on-a-fin/stations"), 200);
        assertThat(stations(table, "RIGHT")).isNotEmpty();
        assertThat(stations(table, "LEFT")).isEmpty();
        assertThat(get("/layouts/on-a-fin").statusCode()).isEqualTo(200);
        assertThat(get("/layouts/on-a-fin/template.pdf?side=LEFT").statusCode()).isEqualTo(400);
        assertThat(get("/layouts/on-a-fin/template.svg?side=RIGHT").body())
                .contains("FIN OF THE TEST")
                .doesNotContain("RIGHT FIN");
    }
}
