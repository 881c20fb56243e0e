package org.vanewright.security;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slf4j.LoggerFactory;
import org.vanewright.audit.AuditEntry;
import org.vanewright.audit.AuditLog;
import org.vanewright.platform.log.ServiceLog;
import org.vanewright.testing.Caller;
import org.vanewright.testing.RawHttp;
import org.vanewright.testing.SignedIn;
import tools.jackson.databind.node.ObjectNode;

/** Text that wants to be SQL, a header, another site's address or a line of the log. */
abstract class InjectionCases extends WalkCases {
    private static final RouteTable PAGES = RouteTable.read("pages.txt");

    /** One line of each address that only reads; drawings and templates read the same parameters each time. */
    private static final List<RouteTable.Line> READING = Stream.of("pages.txt", "api.txt")
            .flatMap(name -> RouteTable.read(name).lines().stream())
            .filter(line -> line.method().equals("GET") && !line.outside())
            .filter(line -> !line.call().contains("{submitted}") && !line.call().contains("{withdrawn}"))
            .filter(line -> !line.call().endsWith(".pdf") && !line.call().endsWith(".dxf"))
            .toList();

    /** Has no divisor in common with the number of texts, so that their turns never fall alike. */
    private static final int TEXTS_AT_EACH = 4;

    static List<String> sql() {
        return List.of(
                "' or '1'='1",
                "'; drop table person; --",
                "x' union select email, password_hash from person --",
                "1) or (1=1",
                "\\'; select pg_sleep(20); --",
                "%' or slug like '%",
                "\u0000",
                "a\u0000b",
                "\uD800",
                "{{7*7}}",
                "9".repeat(40),
                "-1",
                "1e9");
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, UTF_8).replace("+", "%20");
    }

    /**
     * In every parameter at once that a controller of lists, files and searches reads: a few texts to each address, which
     * take turns, so that each of them meets many.
     */
    @Test
    void sqlInEveryParameterIsText() {
        SignedIn judge = signIn(maintainer);
        Routes routes = new Routes(context());
        List<String> calls = new ArrayList<>();
        for (RouteTable.Line line : READING) {
            String path = subjects.fill(line.path());
            for (int i = 0; i < TEXTS_AT_EACH && !routes.parameters("GET", path).isEmpty(); i++) {
                String hostile = encoded(sql().get(calls.size() % sql().size()));
                calls.add(path + "?"
                        + routes.parameters("GET", path).stream()
                                .map(parameter -> parameter + "=" + hostile)
                                .collect(Collectors.joining("&")));
            }
        }
        assertThat(calls).hasSizeGreaterThan(TEXTS_AT_EACH * 20);
        assertThat(broken(judge, calls)).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("sql")
    void sqlInACursorIsRefused(String hostile) {
        assertThat(get("/api/v1/devices?cursor=" + encoded(hostile)).statusCode())
                .isEqualTo(400);
    }

    /** A parameter that is refused first hides the others; so each alone too, with one text after the other. */
    @Test
    void sqlInOneParameterIsText() {
        SignedIn judge = signIn(maintainer);
        Routes routes = new Routes(context());
        List<String> calls = new ArrayList<>();
        for (RouteTable.Line line : READING) {
            String path = subjects.fill(line.path());
            for (String parameter : routes.parameters("GET", path)) {
                calls.add(path + "?" + parameter + "=" + encoded(sql().get(calls.size() % sql().size())));
            }
        }
        assertThat(calls).hasSizeGreaterThan(100);
        assertThat(broken(judge, calls)).isEmpty();
    }

    private static List<String> broken(SignedIn judge, List<String> calls) {
        return calls.stream()
                .filter(call -> judge.get(call).statusCode() >= 500)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("sql")
    void sqlInAnAddressFindsNothing(String hostile) {
        SignedIn judge = signIn(maintainer);
        for (String before : List.of(
                "/devices/",
                "/layouts/",
                "/people/",
                "/drafts/",
                "/devices/drafts/",
                "/reset/",
                "/join/",
                "/api/v1/devices/",
                "/api/v1/drafts/",
                "/review/devices/",
                "/devices/rectangular-vane-8-by-20/revisions/")) {
            assertThat(judge.get(before + encoded(hostile)).statusCode())
                    .as(before + hostile)
                    .isIn(303, 400, 404, 405, 410);
        }
    }

    /** Kept as typed where it may be kept, or refused beside its field. */
    static List<String> texts() {
        return List.of("x'; drop table person; --", "a\u0000b", "\uD800", "%' or '1' like '1");
    }

    @ParameterizedTest
    @MethodSource("texts")
    void sqlInAFormIsText(String hostile) {
        SignedIn person = signIn(author);
        SignedIn judge = signIn(maintainer);
        String bearer = bearer(author);
        List<String> broken = new ArrayList<>();
        for (RouteTable.Line line : PAGES.lines()) {
            if (!line.method().equals("POST")
                    || line.outside()
                    || line.call().contains("sign-out")
                    || line.call().contains("preview")) {
                continue;
            }
            Map<String, String> fields = new HashMap<>(Forms.fields(subjects.fill(line.body())));
            for (String name : List.of(
                    "name",
                    "description",
                    "text",
                    "reason",
                    "field",
                    "summary",
                    "email",
                    "about",
                    "person",
                    "back",
                    "password",
                    "newPassword",
                    "currentPassword",
                    "code",
                    "days")) {
                fields.put(name, hostile);
            }
            Caller caller = line.call().startsWith("/review") ? judge : person;
            int status = caller.postForm(subjects.fill(line.call()), fields, "X-Forwarded-For", network())
                    .statusCode();
            if (status >= 500) {
                broken.add(line + " gave " + status);
            }
        }
        ObjectNode document = subjects.document("devices").put("name", hostile).put("description", hostile);
        int status = postJson("/api/v1/devices", mapper().writeValueAsString(document), "Authorization", bearer)
                .statusCode();
        if (status >= 500) {
            broken.add("POST /api/v1/devices gave " + status);
        }
        ObjectNode layout = subjects.document("layouts");
        ((ObjectNode) layout.get("airframe")).put("slug", hostile);
        String saved = mapper().writeValueAsString(layout);
        HttpResponse<String> answer = postJson("/api/v1/layouts", saved, "Authorization", bearer);
        String draft = "/drafts/" + json(answer, 201).get("id").asString();
        assertThat(person.get(draft + "/submit").statusCode()).isEqualTo(200);
        HttpResponse<String> token =
                get("/api/v1/drafts", "Authorization", "Bearer " + hostile.replaceAll("[^ -~]", ""));
        assertThat(token.statusCode()).isIn(401, 429);
        assertThat(broken).isEmpty();
        assertThat(person.page("/account", 200).text()).contains(author.email());
    }

    static List<String> elsewhere() {
        return List.of(
                "//evil.example",
                "///evil.example",
                "/\\evil.example",
                "\\\\evil.example",
                "/\t/evil.example",
                "https:evil.example",
                "https://evil.example",
                "http:/\\evil.example",
                "%2f%2fevil.example",
                "/%2f/evil.example",
                "/%5cevil.example",
                "/.//evil.example",
                "/..//evil.example",
                "javascript:alert(1)",
                "evil.example",
                "@evil.example",
                "/@evil.example",
                " //evil.example",
                "/\r\nLocation: https://evil.example",
                "/\u0000/evil.example");
    }

    /** Wherever one goes on to after something, it is a place of this service. */
    @ParameterizedTest
    @MethodSource("elsewhere")
    void nobodyIsLedElsewhere(String place) {
        SignedIn person = signIn(author);
        stays(person.get("/sign-in?back=" + encoded(place)));
        stays(newVisitor().get("/sign-in/code?back=" + encoded(place)));
        stays(person.postForm("/units", Map.of("system", "us", "back", place)));
        Caller visitor = newVisitor();
        stays(visitor.postForm("/sign-in/code", Map.of("code", "123456", "back", place)));
        HttpResponse<String> form = visitor.get("/sign-in?back=" + encoded(place), "Accept", "text/html");
        parsed(form, 200)
                .select("input[name=back]")
                .eachAttr("value")
                .forEach(value -> assertThat(leadsTo(value))
                        .isEqualTo(URI.create(origin()).getHost()));
        stays(visitor.postForm(
                "/sign-in", Map.of("email", other.email(), "password", other.password(), "back", place)));
        if (place.chars().allMatch(c -> c > ' ' && c < 127)) {
            stays(person.postFormWithoutToken("/account", Map.of("name", "x"), "Referer", place));
            stays(newVisitor().postForm("/drafts/" + author.id() + "/discard", Map.of(), "Referer", place));
        }
    }

    private void stays(HttpResponse<String> answer) {
        String location = answer.headers().firstValue("Location").orElseThrow();
        assertThat(leadsTo(location))
                .as(location)
                .isEqualTo(URI.create(origin()).getHost());
        assertThat(URI.create(origin()).resolve(location).getRawPath())
                .as(location)
                .doesNotStartWith("//");
    }

    /** The host that a browser would go to, which takes a backslash for a slash. */
    private String leadsTo(String location) {
        String read = location.replaceAll("[\\t\\r\\n]", "").strip().replace('\\', '/');
        return String.valueOf(URI.create(origin() + "/").resolve(read).getHost());
    }

    @Test
    void aDoubledSlashInFrontLeadsNowhereElse() {
        for (String path :
                List.of("//evil.example/drafts", "//evil.example/%2e%2e/drafts", "/\\evil.example/account")) {
            RawHttp.Answer answer = RawHttp.ask(origin(), "GET " + path + " HTTP/1.1");
            answer.headers().stream()
                    .filter(h -> h.regionMatches(true, 0, "Location:", 0, 9))
                    .forEach(h -> assertThat(h).doesNotContain("//evil"));
            assertThat(answer.status()).as(path).isIn(303, 400, 404);
        }
    }

    /** A name that the caller made up for this service is repeated nowhere. */
    @Test
    void theHostHeaderIsBelievedInNothing() {
        for (String path :
                List.of("/", "/drafts", "/sign-in", "/reset", "/devices", "/v3/api-docs", "/api/v1/devices")) {
            for (String header :
                    List.of("Host: evil.example", "X-Forwarded-Host: evil.example", "Forwarded: host=evil.example")) {
                RawHttp.Answer answer = RawHttp.ask(origin(), "GET " + path + " HTTP/1.1", header);
                assertThat(answer.status()).as(path).isIn(200, 303, 400);
                assertThat(answer.body() + answer.headers())
                        .as(path + " " + header)
                        .doesNotContain("evil.example");
            }
        }
    }

    @Test
    void noParameterBecomesAHeader() {
        String split = "%0d%0aX-Injected:%20yes%0d%0a%0d%0a<p>";
        String demo = Subjects.demo("devices");
        for (String path : List.of(
                "/sign-in?back=/" + split,
                "/sign-in/code?back=/" + split,
                "/devices/" + split,
                "/devices/" + demo + "/solid.stl?revision=1" + split,
                "/devices/" + demo + "/plate.3mf?count=2" + split,
                "/layouts/low-wing-pairs-over-the-taper/template.pdf?side=LEFT" + split,
                "/layouts/low-wing-pairs-over-the-taper/template.pdf?paper=A4" + split,
                "/api/v1/devices?cursor=" + split,
                "/drafts" + split,
                "/drafts?x=" + split)) {
            RawHttp.Answer answer = RawHttp.ask(origin(), "GET " + path + " HTTP/1.1");
            assertThat(answer.status()).as(path).isBetween(200, 499);
            assertThat(answer.headers()).as(path).noneMatch(h -> h.regionMatches(true, 0, "X-Injected", 0, 10));
        }
        SignedIn person = signIn(author);
        for (String name : List.of("back", "system")) {
            HttpResponse<String> answer = person.postForm("/units", Map.of(name, "us\r\nX-Injected: yes\r\n\r\n"));
            assertThat(answer.headers().firstValue("X-Injected")).isEmpty();
        }
    }

    /** Whatever a caller sends, each line of the log and of the audit log is the service's own. */
    @Test
    void noTextOfACallerIsALineOfTheLog() {
        String forged = "2026-01-01T00:00:00.000Z  INFO forged";
        Logger root = (Logger) LoggerFactory.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
        ListAppender<ILoggingEvent> seen = new ListAppender<>();
        seen.start();
        root.addAppender(seen);
        try {
            for (String end : List.of("\n", "\r", "\r\n", "\u0085", "\u2028", "\u001B[2K")) {
                String hostile = "kim@club.example" + end + forged;
                newVisitor().postForm("/sign-in", Map.of("email", hostile, "password", hostile));
                newVisitor().postForm("/reset", Map.of("email", hostile));
                get("/devices/" + encoded(hostile));
                get("/api/v1/devices?limit=" + encoded(hostile));
                postJson("/api/v1/devices", hostile);
                newVisitor().call("PUT", "/api/v1/devices?" + encoded(hostile), hostile);
            }
        } finally {
            root.detachAppender(seen);
        }
        assertThat(ServiceLog.written(seen.list).lines()).noneMatch(line -> line.startsWith(forged));
        assertThat(context().getBean(AuditLog.class).newest(null, 50))
                .isNotEmpty()
                .extracting(AuditEntry::subject)
                .allMatch(subject -> !subject.contains("forged"));
    }

    @Test
    void aDraftOfSomebodyElseLooksLikeNoDraft() {
        SignedIn stranger = signIn(other);
        String bearer = bearer(other);
        String draft = subjects.fill("{draft}");
        String waiting = subjects.fill("{waiting}");
        String none = "00000000-0000-4000-8000-000000000000";
        for (String form : List.of("/drafts/%s", "/devices/drafts/%s", "/drafts/%s/submit", "/drafts/%s/discard")) {
            String missing =
                    stranger.page(form.formatted(none), 404).select("main").text();
            for (String id : List.of(draft, waiting)) {
                assertThat(stranger.page(form.formatted(id), 404).select("main").text())
                        .isEqualTo(missing);
            }
        }
        String missing = get("/api/v1/drafts/" + none, "Authorization", bearer).body();
        for (String id : List.of(draft, waiting)) {
            HttpResponse<String> answer = get("/api/v1/drafts/" + id, "Authorization", bearer);
            assertThat(answer.statusCode()).isEqualTo(404);
            assertThat(answer.body().replace(id, none)).isEqualTo(missing);
        }
        String slug = subjects.fill("{submitted}");
        for (String form :
                List.of("/devices/%s/revisions/1", "/devices/%s/history", "/devices/%s/drawing.svg?revision=1")) {
            String shown =
                    stranger.page(form.formatted(slug), 404).select("main").text();
            String absent = stranger.page(form.formatted("nothing-of-the-kind"), 404)
                    .select("main")
                    .text();
            assertThat(shown.replace(slug, "nothing-of-the-kind")).isEqualTo(absent);
        }
    }
}
