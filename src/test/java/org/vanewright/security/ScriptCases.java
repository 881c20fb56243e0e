package org.vanewright.security;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.testing.Caller;
import org.vanewright.testing.SignedIn;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Scripts that somebody types somewhere, and that a page must show as the text they are. */
abstract class ScriptCases extends WalkCases {
    private static final RouteTable PAGES = RouteTable.read("pages.txt");

    private final List<String> faults = new ArrayList<>();

    @AfterEach
    void noAnswerRunsWhatWasTyped() {
        assertThat(faults).isEmpty();
    }

    private HttpResponse<String> look(HttpResponse<String> answer) {
        faults.addAll(Markup.faults(answer));
        return answer;
    }

    /** A page that shows the text, as text. */
    private void shows(Caller caller, String path, String text) {
        HttpResponse<String> answer = look(caller.get(path, "Accept", "text/html"));
        assertThat(answer.statusCode()).as(path).isEqualTo(200);
        assertThat(Jsoup.parse(answer.body()).wholeText() + answer.body())
                .as(path + " shows what it is to be tested with")
                .containsAnyOf(text, escaped(text));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    /** Sets every text that may be anything, here and below; gives how many there were. */
    private int poison(JsonNode node, String hostile) {
        int count = 0;
        if (node instanceof ObjectNode object) {
            for (Map.Entry<String, JsonNode> entry : List.copyOf(object.properties())) {
                boolean free = List.of("name", "description", "reason", "surface", "slug", "text")
                        .contains(entry.getKey());
                if (entry.getValue().isString() && free) {
                    object.put(entry.getKey(), hostile);
                    count++;
                } else {
                    count += poison(entry.getValue(), hostile);
                }
            }
        } else if (node instanceof ArrayNode array) {
            for (JsonNode item : array) {
                count += poison(item, hostile);
            }
        }
        return count;
    }

    /** Drafts hold whatever was typed; these are all their pages. */
    @ParameterizedTest
    @ValueSource(strings = {"devices", "airframes", "layouts"})
    void everyTextOfADraftIsShownAsText(String plural) {
        SignedIn person = signIn(author);
        String bearer = bearer(author);
        for (String hostile : Markup.HOSTILE) {
            ObjectNode document = subjects.document(plural);
            assertThat(poison(document, hostile)).isPositive();
            HttpResponse<String> saved =
                    look(postJson("/api/v1/" + plural, document.toString(), "Authorization", bearer));
            String id = json(saved, 201).get("id").asString();
            shows(person, "/" + plural + "/drafts/" + id, hostile);
            shows(person, "/drafts/" + id, hostile);
            shows(person, "/drafts", hostile);
            look(person.get("/drafts/" + id + "/submit"));
            look(person.get("/drafts/" + id + "/discard"));
            look(get("/api/v1/drafts/" + id, "Authorization", bearer));
            look(person.postForm("/" + plural + "/new", Map.of("name", hostile, "description", hostile)));
            look(person.postForm("/" + plural + "/preview", Map.of("name", hostile, "surfaces[0].name", hostile)));
        }
    }

    /** From the draft to the public record and out of it again, with every text of the way. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void everyTextOfAReviewAndARecordIsShownAsText(int which) {
        String hostile = Markup.HOSTILE.get(which);
        SignedIn person = signIn(author);
        SignedIn judge = signIn(maintainer);
        assertThat(person.postForm("/account", Map.of("name", hostile, "about", hostile))
                        .statusCode())
                .isEqualTo(303);
        shows(person, "/account", hostile);
        judge.postForm("/account", Map.of("name", hostile + ".", "about", hostile));
        ObjectNode document = subjects.document("devices").put("name", hostile).put("description", hostile);
        String id = json(postJson("/api/v1/devices", document.toString(), "Authorization", bearer(author)), 201)
                .get("id")
                .asString();
        Map<String, String> submission = Map.of("version", "1", "licence", "CC0_1_0", "summary", hostile);
        String slug = slug(person.postForm("/drafts/" + id + "/submit", submission));
        String review = "/review/devices/" + slug + "/1";
        look(judge.postForm(review + "/claim", Map.of()));
        look(judge.postForm(review + "/remark", Map.of("text", hostile, "field", "vane.heightMm")));
        look(judge.postForm(review + "/remark", Map.of("text", hostile, "field", hostile)));
        look(judge.postForm(review + "/return", Map.of("reason", " ", "text", hostile, "field", hostile)));
        shows(judge, review, hostile);
        shows(judge, "/review", hostile);
        judge.postForm(review + "/return", Map.of("reason", hostile));
        shows(person, "/drafts/" + id, hostile);
        look(person.get("/devices/drafts/" + id));
        slug(person.postForm("/drafts/" + id + "/submit", submission));
        look(judge.postForm("/review/devices/" + slug + "/2/publish", Map.of()));
        shows(newVisitor(), "/devices/" + slug, hostile);
        judge.postForm("/review/devices/" + slug + "/2/withdraw", Map.of("reason", hostile));
        for (String path : new String[] {"/devices/" + slug, "/devices/" + slug + "/history", "/people"}) {
            shows(newVisitor(), path, hostile);
        }
        shows(newVisitor(), "/people/" + author.id(), hostile);
        shows(newVisitor(), "/devices/" + slug + "/revisions/2", hostile);
        look(get("/devices/" + slug + "/compare?from=2&to=2"));
        look(get("/devices/" + slug + "/drawing.svg?revision=2"));
        look(get("/api/v1/devices/" + slug + "/revisions/2"));
        look(get("/"));
    }

    private static String slug(HttpResponse<String> submitted) {
        return submitted.headers().firstValue("Location").orElseThrow().replaceFirst("^.*/devices/([^/]+)/.*$", "$1");
    }

    @Test
    void whatIsTypedIntoOtherFormsIsShownAsText() {
        SignedIn person = signIn(author);
        for (String hostile : Markup.HOSTILE) {
            Caller visitor = newVisitor();
            look(visitor.postForm("/sign-in", Map.of("email", hostile, "password", "x", "back", hostile)));
            look(visitor.postForm("/reset", Map.of("email", hostile)));
            look(visitor.postForm(
                    subjects.fill("/join/{invitation}"),
                    Map.of("email", hostile, "name", hostile, "newPassword", "x")));
            look(visitor.postForm("/password-strength", Map.of("newPassword", hostile, "name", hostile)));
            look(visitor.postForm("/units", Map.of("system", hostile, "back", hostile)));
            look(person.postForm("/account/tokens", Map.of("name", hostile, "read", "true", "days", "30")));
            look(person.postForm("/account/tokens", Map.of("name", hostile, "days", hostile)));
            shows(person, "/account/tokens", hostile);
            look(person.postForm(subjects.fill("/drafts/{draft}/coauthors"), Map.of("person", hostile)));
            look(person.postForm(subjects.fill("/drafts/{draft}/submit"), Map.of("version", hostile)));
            look(person.postForm(
                    subjects.fill("/drafts/{draft}/submit"),
                    Map.of("version", "1", "licence", hostile, "summary", "a")));
        }
    }

    /** Every parameter that any controller reads, on every page, and every variable of its address. */
    @Test
    void whatStandsInAnAddressIsShownAsText() {
        SignedIn person = signIn(author);
        SignedIn judge = signIn(maintainer);
        String hostile = URLEncoder.encode(Markup.HOSTILE.get(0), UTF_8);
        Routes routes = new Routes(context());
        Set<String> tried = new HashSet<>();
        for (RouteTable.Line line : PAGES.lines()) {
            if (!line.method().equals("GET") || line.outside()) {
                continue;
            }
            Caller caller = line.call().startsWith("/review") ? judge : person;
            String path = subjects.fill(line.path());
            for (String parameter : routes.parameters("GET", path)) {
                tried.add(parameter);
                look(caller.get(path + "?" + parameter + "=" + hostile));
            }
        }
        assertThat(tried).contains("cursor", "field", "back", "side", "paper");
    }

    @Test
    void whatIsNotFoundIsNotRepeatedAsMarkup() {
        SignedIn judge = signIn(maintainer);
        for (String hostile : Markup.HOSTILE) {
            String encoded =
                    URLEncoder.encode(hostile, UTF_8).replace("+", "%20").replace("%2F", "-");
            for (String before : new String[] {
                "/", "/devices/", "/layouts/a/", "/people/", "/drafts/", "/review/devices/", "/reset/", "/join/"
            }) {
                look(judge.get(before + encoded, "Accept", "text/html"));
            }
            for (String before : new String[] {"/api/v1/", "/api/v1/devices/", "/api/v1/drafts/"}) {
                HttpResponse<String> answer = look(judge.get(before + encoded, "Accept", "text/html"));
                assertThat(answer.headers().firstValue("Content-Type")).hasValue("application/problem+json");
            }
            look(judge.get("/api/v1/devices?cursor=" + encoded + "&limit=" + encoded));
            look(postJson("/api/v1/calculations/solid", "{\"" + hostile.replace("\"", "\\\"") + "\":1}"));
        }
    }
}
