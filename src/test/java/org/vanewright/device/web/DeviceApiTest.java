package org.vanewright.device.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.Role;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Devices as programs meet them. */
class DeviceApiTest extends ServerTest {
    private static final String API = "/api/v1/devices";
    private static final String DEMO = API + "/rectangular-vane-8-by-20";

    private ObjectNode document(String name) {
        ObjectNode content = (ObjectNode) json(get(DEMO + "/revisions/1"), 200).get("content");
        return content.put("name", name);
    }

    private void create(String name) {
        shipped("devices", document(name));
    }

    @Test
    void listsByAnOpaqueCursorUntilTheEnd() {
        create("Cursor one");
        create("Cursor two");
        JsonNode first = json(get(API + "?limit=1"), 200);
        assertThat(first.get("items")).hasSize(1);
        JsonNode second =
                json(get(API + "?limit=200&cursor=" + first.get("nextCursor").asString()), 200);
        assertThat(slugs(second))
                .contains("cursor-one", "rectangular-vane-8-by-20")
                .doesNotContain(slugs(first).get(0));
        assertThat(second.get("nextCursor").isNull()).isTrue();
    }

    private static List<String> slugs(JsonNode page) {
        return StreamSupport.stream(page.get("items").spliterator(), false)
                .map(i -> i.get("slug").asString())
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
        ObjectNode document = document("A real one");
        document.remove("invented");
        assertThat(json(sendAsMember(API, document.toString()), 201)
                        .get("content")
                        .get("invented")
                        .asBoolean())
                .isFalse();
    }

    @Test
    void aFixedRevisionCarriesAStrongTagThatSavesSendingItAgain() {
        HttpResponse<String> first = get(DEMO + "/revisions/1");
        String etag = first.headers().firstValue("ETag").orElseThrow();
        assertThat(etag).startsWith("\"").doesNotStartWith("W/");
        assertThat(get(DEMO + "/revisions/1", "If-None-Match", etag).statusCode())
                .isEqualTo(304);
    }

    @Test
    void aDraftOfTheNextRevisionNeedsTheTagOfTheOneItChanges() {
        String slug = shipped("devices", document("To be revised")).replace("/devices/", "");
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
    void everyProblemIsNamedWithItsField() {
        ObjectNode document = document("");
        ((ObjectNode) document.get("vane")).put("heightMm", -5);
        ((ObjectNode) document.get("base")).put("widthMm", 1000);
        document.put("densityKgM3", 1);
        JsonNode draft = json(sendAsMember(API, document.toString()), 201);
        assertThat(StreamSupport.stream(draft.get("problems").spliterator(), false)
                        .map(e -> e.get("field").asString()))
                .containsExactlyInAnyOrder("name", "vane.heightMm", "base.widthMm", "densityKgM3");
    }

    @Test
    void aBodyOverTheLimitIsRefused() {
        String body = document("x").put("description", "y".repeat(300 * 1024)).toString();
        assertThat(json(sendAsMember(API, body), 413).get("title").asString()).isNotBlank();
    }

    @Test
    void aNameWithMarkupIsText() {
        String path = shipped("devices", document("<script>alert(1)</script> & \"vane\""));
        var page = page(path, 200);
        assertThat(page.select("h1").text()).isEqualTo("<script>alert(1)</script> & \"vane\"");
        assertThat(page.select("script:not([src]):not([type$=json])")).isEmpty();
        assertThat(get(path + "/drawing.svg").body()).doesNotContain("<script");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"name\":\"x\",\"fins\":1}",
                "{\"name\":\"x\",\"vane\":{\"heightMm\":NaN}}",
                "{\"name\":\"x\",\"vane\":{\"heightMm\":1e999}}",
                "{\"name\":\"x\",\"vane\":{\"heightMm\":\"8\"}}",
                "{\"name\":\"x\",\"vane\":{\"planform\":\"DELTA\"}}",
                "{\"name\":\"x\",\"vane\":[]}",
                "{\"name\":\"x\",\"pair\":{\"angleDeg\":-Infinity}}",
                "[]",
                "null",
                "{\"name\":"
            })
    void hostileDocumentsAreBadInput(String body) {
        JsonNode problem = json(sendAsMember(API, body), 400);
        assertThat(problem.get("errors")).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/nowhere",
                "/..%2f..%2fetc%2fpasswd",
                "/%00",
                "/a'%20or%201=1",
                "/rectangular-vane-8-by-20/revisions/99"
            })
    void whatIsNotThereIsNotFoundOrRefused(String path) {
        assertThat(get(API + path).statusCode()).isIn(400, 404);
    }

    @Test
    void aRevisionThatIsNoNumberIsBadInput() {
        assertThat(json(get(DEMO + "/revisions/two"), 400).get("errors")).isNotEmpty();
    }
}
