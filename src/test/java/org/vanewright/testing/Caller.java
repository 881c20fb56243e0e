package org.vanewright.testing;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.net.HttpCookie;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jspecify.annotations.Nullable;

/** Calls the service as one browser would: it keeps cookies and sends the token of its session with each form. */
public class Caller {
    private static final String TOKEN = "_csrf";

    private final String origin;
    private final Map<String, String> cookies = new LinkedHashMap<>();
    private @Nullable String token;
    private boolean inside;

    Caller(String origin) {
        this.origin = origin;
    }

    public HttpResponse<String> get(String path, String... headers) {
        return send(request(path, headers).GET());
    }

    /** A page, parsed; fails unless it is served with that status. */
    public Document page(String path, int status) {
        HttpResponse<String> response = get(path, "Accept", "text/html");
        if (response.statusCode() != status) {
            throw new AssertionError(
                    path + " gave " + response.statusCode() + " instead of " + status + "\n" + response.body());
        }
        return Jsoup.parse(response.body(), origin);
    }

    public HttpResponse<String> postForm(String path, Map<String, String> fields, String... headers) {
        Map<String, String> sent = new LinkedHashMap<>(fields);
        sent.put(TOKEN, token());
        return postFormWithoutToken(path, sent, headers);
    }

    public HttpResponse<String> postFormWithoutToken(String path, Map<String, String> fields, String... headers) {
        return send(request(path, headers)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(HttpRequest.BodyPublishers.ofString(ServerTest.urlEncoded(fields))));
    }

    /** A form with files beside its fields: by field name, the file's content. */
    public HttpResponse<String> postMultipart(
            String path, Map<String, String> fields, Map<String, String> files, String... headers) {
        Map<String, String> sent = new LinkedHashMap<>(fields);
        sent.put(TOKEN, token());
        return postMultipartWithoutToken(path, sent, files, headers);
    }

    public HttpResponse<String> postMultipartWithoutToken(
            String path, Map<String, String> fields, Map<String, String> files, String... headers) {
        String boundary = UUID.randomUUID().toString();
        StringBuilder body = new StringBuilder();
        fields.forEach((name, value) -> body.append(part(boundary, "name=\"" + name + "\"", value)));
        files.forEach((name, content) ->
                body.append(part(boundary, "name=\"" + name + "\"; filename=\"" + name + ".txt\"", content)));
        return send(request(path, headers)
                .header("Content-Type", "multipart/form-data; boundary=" + boundary)
                .POST(HttpRequest.BodyPublishers.ofString(body + "--" + boundary + "--\r\n", UTF_8)));
    }

    /** A form with one file of any bytes beside its fields. */
    public HttpResponse<String> postFile(String path, Map<String, String> fields, String field, byte[] content) {
        return postFiles(path, fields, field, List.of(content));
    }

    /** A form with several files in one field beside its others. */
    public HttpResponse<String> postFiles(
            String path, Map<String, String> fields, String field, List<byte[]> contents) {
        String boundary = UUID.randomUUID().toString();
        StringBuilder before = new StringBuilder(part(boundary, "name=\"" + TOKEN + "\"", token()));
        fields.forEach((name, value) -> before.append(part(boundary, "name=\"" + name + "\"", value)));
        List<HttpRequest.BodyPublisher> body = new ArrayList<>();
        body.add(HttpRequest.BodyPublishers.ofString(before.toString(), UTF_8));
        for (byte[] content : contents) {
            String head = "--" + boundary + "\r\nContent-Disposition: form-data; name=\"" + field
                    + "\"; filename=\"../../photo.php\"\r\nContent-Type: text/html\r\n\r\n";
            body.add(HttpRequest.BodyPublishers.ofString(head, UTF_8));
            body.add(HttpRequest.BodyPublishers.ofByteArray(content));
            body.add(HttpRequest.BodyPublishers.ofString("\r\n", UTF_8));
        }
        body.add(HttpRequest.BodyPublishers.ofString("--" + boundary + "--\r\n", UTF_8));
        return send(request(path)
                .header("Content-Type", "multipart/form-data; boundary=" + boundary)
                .POST(HttpRequest.BodyPublishers.concat(body.toArray(HttpRequest.BodyPublisher[]::new))));
    }

    /** A file as a program sends it, without cookies. */
    public HttpResponse<String> sendFile(String path, String field, byte[] content, String bearer) {
        String boundary = UUID.randomUUID().toString();
        String head = "--" + boundary + "\r\nContent-Disposition: form-data; name=\"" + field
                + "\"; filename=\"a\"\r\nContent-Type: application/octet-stream\r\n\r\n";
        return ServerTest.send(request(path)
                .header("Authorization", bearer)
                .header("Content-Type", "multipart/form-data; boundary=" + boundary)
                .POST(HttpRequest.BodyPublishers.concat(
                        HttpRequest.BodyPublishers.ofString(head, UTF_8),
                        HttpRequest.BodyPublishers.ofByteArray(content),
                        HttpRequest.BodyPublishers.ofString("\r\n--" + boundary + "--\r\n", UTF_8))));
    }

    private static String part(String boundary, String names, String content) {
        return "--" + boundary + "\r\nContent-Disposition: form-data; " + names + "\r\n\r\n" + content + "\r\n";
    }

    /** With the cookies, which the API must not look at. */
    public HttpResponse<String> postJson(String path, String body, String... headers) {
        return send(request(path, headers)
                .header("Content-Type", "application/json")
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    /** Any method, with the cookies; an empty body is none. */
    public HttpResponse<String> call(String method, String path, String body, String... headers) {
        return send(request(path, headers).method(method, HttpRequest.BodyPublishers.ofString(body)));
    }

    /** The token of this caller's session, which is begun where there is none. */
    public String token() {
        String known = token;
        if (known == null) {
            known = page(pageWithForm(), 200).select("input[name=" + TOKEN + "]").stream()
                    .map(field -> field.attr("value"))
                    .filter(value -> !value.isEmpty())
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no form with a token"));
            token = known;
        }
        return known;
    }

    String pageWithForm() {
        return inside ? "/account" : "/sign-in";
    }

    /** Signed in by another way than {@link SignedIn}. */
    final void signedIn() {
        inside = true;
    }

    /** A file as it is sent. */
    public HttpResponse<byte[]> file(String path, String... headers) {
        return ServerTest.send(request(path, headers).GET(), HttpResponse.BodyHandlers.ofByteArray());
    }

    final void forgetToken() {
        token = null;
    }

    /** Value of a cookie; null where there is none. */
    public @Nullable String cookie(String name) {
        return cookies.get(name);
    }

    public void setCookie(String name, String value) {
        cookies.put(name, value);
    }

    private HttpRequest.Builder request(String path, String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(origin + path));
        if (!cookies.isEmpty()) {
            request.header(
                    "Cookie",
                    cookies.entrySet().stream()
                            .map(e -> e.getKey() + "=" + e.getValue())
                            .collect(Collectors.joining("; ")));
        }
        return headers.length == 0 ? request : request.headers(headers);
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        HttpResponse<String> response = ServerTest.send(request);
        response.headers().allValues("set-cookie").stream()
                .flatMap(header -> HttpCookie.parse(header).stream())
                .forEach(cookie -> cookies.put(cookie.getName(), cookie.getValue()));
        return response;
    }
}
