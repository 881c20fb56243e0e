package org.vanewright.benchmark.load;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.zip.GZIPInputStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;

/** One client with cookies of its own, which takes answers packed as browsers do and notes how long each took. */
final class Visitor {
    private final String origin;
    private final HttpClient client;
    private final SplittableRandom random;
    private final Recorder recorder;

    Visitor(String origin, long seed, Recorder recorder) {
        this.origin = origin;
        this.recorder = recorder;
        this.random = new SplittableRandom(seed);
        this.client = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .cookieHandler(new CookieManager())
                .followRedirects(HttpClient.Redirect.NEVER)
                .build();
    }

    SplittableRandom random() {
        return random;
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    /** Asks for a page or file, which must be there. */
    void get(String label, String path, String... headers) {
        send(label, request(path, headers).GET(), 200);
    }

    /** The same as a parsed page, not measured. */
    Document page(String path) {
        return Jsoup.parse(text(sent(request(path, "Accept", "text/html").GET())), origin);
    }

    HttpResponse<byte[]> postForm(String label, String path, Map<String, String> fields, int expected) {
        String body = fields.entrySet().stream()
                .map(e -> URLEncoder.encode(e.getKey(), StandardCharsets.UTF_8) + "="
                        + URLEncoder.encode(e.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
        return send(
                label,
                request(path, "Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(body)),
                expected);
    }

    HttpResponse<byte[]> postJson(String label, String path, String json, String bearer, int expected) {
        return send(
                label,
                request(path, "Content-Type", "application/json", "Authorization", bearer)
                        .POST(HttpRequest.BodyPublishers.ofString(json)),
                expected);
    }

    private HttpRequest.Builder request(String path, String... headers) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(URI.create(origin + path)).header("Accept-Encoding", "gzip");
        return headers.length == 0 ? request : request.headers(headers);
    }

    private HttpResponse<byte[]> send(String label, HttpRequest.Builder request, int expected) {
        long from = System.nanoTime();
        HttpResponse<byte[]> answer = sent(request);
        long took = System.nanoTime() - from;
        recorder.note(label, took, answer.body().length);
        if (answer.statusCode() != expected) {
            recorder.failed(label, answer.uri() + " gave " + answer.statusCode() + "\n" + text(answer));
        }
        return answer;
    }

    private HttpResponse<byte[]> sent(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    static String text(HttpResponse<byte[]> answer) {
        boolean packed = answer.headers()
                .firstValue("Content-Encoding")
                .filter("gzip"::equals)
                .isPresent();
        try {
            byte[] plain = packed
                    ? new GZIPInputStream(new ByteArrayInputStream(answer.body())).readAllBytes()
                    : answer.body();
            return new String(plain, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
