package org.vanewright.testing;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.ApplicationContext;
import org.springframework.test.context.ActiveProfiles;
import org.vanewright.account.AccessTokens;
import org.vanewright.account.Acting;
import org.vanewright.account.NewPeople;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.account.TokenScope;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The whole service on a free port with demonstration data; all such tests share one. */
@SpringBootTest(webEnvironment = SpringBootTest.WebEnvironment.RANDOM_PORT)
@ActiveProfiles({"test", "demo"})
public abstract class ServerTest {
    private static final HttpClient CLIENT =
            HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NEVER).build();

    @LocalServerPort
    private int port;

    @Autowired
    private JsonMapper mapper;

    @Autowired
    private ApplicationContext context;

    private @Nullable Caller visitor;
    private @Nullable String memberBearer;

    /** Address of the service, with the prefix that it lies under where a test gives it one. */
    protected final String origin() {
        return "http://localhost:" + port + context.getEnvironment().getProperty("server.servlet.context-path", "");
    }

    protected final HttpResponse<String> get(String path, String... headers) {
        return send(request(path, headers).GET());
    }

    /** A page, parsed; fails unless it is served with that status. */
    protected final Document page(String path, int status) {
        return parsed(get(path, "Accept", "text/html"), status);
    }

    protected final Document parsed(HttpResponse<String> response, int status) {
        if (response.statusCode() != status) {
            throw new AssertionError(response.uri() + " gave " + response.statusCode() + " instead of " + status + "\n"
                    + response.body());
        }
        return Jsoup.parse(response.body(), origin());
    }

    /** A form as a visitor sends it from a page of this service, with the token of a session. */
    protected final HttpResponse<String> postForm(String path, Map<String, String> fields, String... headers) {
        if (visitor == null) {
            visitor = newVisitor();
        }
        return visitor.postForm(path, fields, headers);
    }

    /** A form of somebody who has no session here. */
    protected final HttpResponse<String> postFormWithoutSession(
            String path, Map<String, String> fields, String... headers) {
        return send(request(path, headers)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(urlEncoded(fields))));
    }

    /** A caller with a cookie jar of their own, not signed in. */
    protected final Caller newVisitor() {
        return new Caller(origin());
    }

    /** A fresh person of that role, signed in. */
    protected final SignedIn signIn(Role role) {
        return signIn(newPerson(role));
    }

    protected final SignedIn signIn(NewPerson person) {
        return new SignedIn(origin(), person);
    }

    /** A fresh person of that role, not signed in. */
    protected final NewPerson newPerson(Role role) {
        return NewPeople.add(context, role);
    }

    /** The value of an {@code Authorization} header with which a program asks in that person's name. */
    protected final String bearer(NewPerson person) {
        AccessTokens tokens = context.getBean(AccessTokens.class);
        return Acting.as(
                person,
                () -> "Bearer " + tokens.create("Test", tokens.scopes(), 30).secret());
    }

    /** As {@link #bearer(NewPerson)} for a token of certain scopes only. */
    protected final String bearer(NewPerson person, TokenScope first, TokenScope... more) {
        Set<TokenScope> scopes = EnumSet.of(first, more);
        AccessTokens tokens = context.getBean(AccessTokens.class);
        return Acting.as(
                person,
                () -> "Bearer " + tokens.create("Test of " + scopes, scopes, 30).secret());
    }

    /** As {@link #bearer(NewPerson)} for a fresh person of that role. */
    protected final String bearer(Role role) {
        return bearer(newPerson(role));
    }

    protected final Publishing publishing() {
        return new Publishing(context);
    }

    /** A public record with that document; gives the address of its page. */
    protected final String shipped(String plural, JsonNode document) {
        Class<?> type =
                context.getBean(Records.class).ofPlural(plural).orElseThrow().contentType();
        Revision<?> revision = publishing().ship(plural, mapper.treeToValue(document, type));
        return "/" + plural + "/" + revision.slug();
    }

    protected final ApplicationContext context() {
        return context;
    }

    protected final HttpResponse<String> postJson(String path, String body, String... headers) {
        return send(request(path, headers)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    /** JSON as the program of a member sends it, the same member for a whole test. */
    protected final HttpResponse<String> sendAsMember(String path, String body, String... headers) {
        String[] all = Arrays.copyOf(headers, headers.length + 2);
        all[headers.length] = "Authorization";
        all[headers.length + 1] = memberBearer();
        return postJson(path, body, all);
    }

    /** What that program signs in with. */
    protected final String memberBearer() {
        if (memberBearer == null) {
            memberBearer = bearer(Role.MEMBER);
        }
        return memberBearer;
    }

    protected final JsonNode json(HttpResponse<String> response, int status) {
        if (response.statusCode() != status) {
            throw new AssertionError(response.uri() + " gave " + response.statusCode() + " instead of " + status + "\n"
                    + response.body());
        }
        return mapper.readTree(response.body());
    }

    protected final JsonMapper mapper() {
        return mapper;
    }

    static String urlEncoded(Map<String, String> fields) {
        return fields.entrySet().stream()
                .map(e -> URLEncoder.encode(e.getKey(), UTF_8) + "=" + URLEncoder.encode(e.getValue(), UTF_8))
                .collect(Collectors.joining("&"));
    }

    private HttpRequest.Builder request(String path, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(origin() + path));
        return headers.length == 0 ? request : request.headers(headers);
    }

    static HttpResponse<String> send(HttpRequest.Builder request) {
        return send(request, HttpResponse.BodyHandlers.ofString());
    }

    static <T> HttpResponse<T> send(HttpRequest.Builder request, HttpResponse.BodyHandler<T> as) {
        try {
            return CLIENT.send(request.build(), as);
        } catch (IOException e) {
            throw new AssertionError(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }
}
