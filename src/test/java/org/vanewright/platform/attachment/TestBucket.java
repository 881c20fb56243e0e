package org.vanewright.platform.attachment;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Object storage of one bucket in memory, over HTTP, with the calls of the S3 API that the service makes: PutObject,
 * GetObject, ListObjectsV2, DeleteObjects. What is not signed by its key, or whose body has another hash than was signed, is
 * refused.
 */
public final class TestBucket implements AutoCloseable {
    private static final String NAME = "vanes";
    private static final String ACCESS_KEY = "test-key";
    private static final int LISTED_AT_ONCE = 2;
    private static final Pattern REMOVED = Pattern.compile("<Key>([^<]+)</Key>");

    final Map<String, byte[]> objects = new TreeMap<>();
    Instant changedAt = Instant.now();
    private final List<String> refused = new ArrayList<>();
    private final HttpServer server;
    private volatile boolean broken;

    private TestBucket() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", this::answer);
        server.start();
    }

    public static TestBucket start() {
        try {
            return new TestBucket();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** As a service has them that is configured so. */
    public Attachments attachments() {
        return new Attachments(AttachmentConfiguration.storage(settings("of-tests/")));
    }

    AttachmentSettings settings(String prefix) {
        URI endpoint = URI.create("http://127.0.0.1:" + server.getAddress().getPort());
        return new AttachmentSettings(NAME, endpoint, "north-1", ACCESS_KEY, "a secret", true, prefix);
    }

    /** Keys that there are. */
    public synchronized List<String> keys() {
        return List.copyOf(objects.keySet());
    }

    public synchronized List<String> refused() {
        return List.copyOf(refused);
    }

    /** For the next test. */
    public synchronized void empty() {
        objects.clear();
    }

    /** From now on it answers 503. */
    public void breakDown() {
        broken = true;
    }

    private synchronized void answer(HttpExchange exchange) throws IOException {
        byte[] body = exchange.getRequestBody().readAllBytes();
        try (exchange) {
            if (broken) {
                send(exchange, 503, "<Error><Code>ServiceUnavailable</Code></Error>".getBytes(StandardCharsets.UTF_8));
            } else if (!isSigned(exchange, body)) {
                refused.add(exchange.getRequestMethod() + " " + exchange.getRequestURI());
                send(exchange, 403, "<Error><Code>AccessDenied</Code></Error>".getBytes(StandardCharsets.UTF_8));
            } else {
                serve(exchange, body);
            }
        }
    }

    private static boolean isSigned(HttpExchange exchange, byte[] body) {
        String signature = String.valueOf(exchange.getRequestHeaders().getFirst("Authorization"));
        String hash = String.valueOf(exchange.getRequestHeaders().getFirst("x-amz-content-sha256"));
        return signature.matches(
                        "AWS4-HMAC-SHA256 Credential=" + ACCESS_KEY
                                + "/[0-9]{8}/north-1/s3/aws4_request, SignedHeaders=\\S*x-amz-content-sha256\\S*, Signature=[0-9a-f]{64}")
                && (hash.equals(sha256(body)) || body.length == 0 && hash.equals("UNSIGNED-PAYLOAD"));
    }

    private static String sha256(byte[] body) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(body));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private void serve(HttpExchange exchange, byte[] body) throws IOException {
        String query = exchange.getRequestURI().getRawQuery();
        String path = exchange.getRequestURI().getPath();
        String key = path.startsWith("/" + NAME + "/") ? path.substring(NAME.length() + 2) : "";
        switch (exchange.getRequestMethod()) {
            case "PUT" -> {
                objects.put(key, body);
                send(exchange, 200, new byte[0]);
            }
            case "GET" -> {
                if (key.isEmpty()) {
                    send(exchange, 200, list(parameters(query)).getBytes(StandardCharsets.UTF_8));
                } else {
                    send(exchange, key);
                }
            }
            case "POST" -> {
                Matcher removed = REMOVED.matcher(new String(body, StandardCharsets.UTF_8));
                while (removed.find()) {
                    objects.remove(removed.group(1));
                }
                send(exchange, 200, "<DeleteResult/>".getBytes(StandardCharsets.UTF_8));
            }
            default -> send(exchange, 405, new byte[0]);
        }
    }

    private static Map<String, String> parameters(@Nullable String query) {
        Map<String, String> parameters = new TreeMap<>();
        for (String each : String.valueOf(query).split("&")) {
            String[] parts = each.split("=", 2);
            parameters.put(parts[0], parts.length == 1 ? "" : URLDecoder.decode(parts[1], StandardCharsets.UTF_8));
        }
        return parameters;
    }

    private String list(Map<String, String> asked) {
        String after = asked.getOrDefault("continuation-token", "");
        List<String> found = objects.keySet().stream()
                .filter(k -> k.startsWith(asked.getOrDefault("prefix", "")) && k.compareTo(after) > 0)
                .toList();
        List<String> some = found.subList(0, Math.min(LISTED_AT_ONCE, found.size()));
        StringBuilder all = new StringBuilder("<ListBucketResult>");
        boolean more = some.size() < found.size();
        all.append("<IsTruncated>").append(more).append("</IsTruncated>");
        if (more) {
            String last = some.get(some.size() - 1);
            all.append("<NextContinuationToken>").append(last).append("</NextContinuationToken>");
        }
        some.forEach(k -> all.append("<Contents><Key>")
                .append(k)
                .append("</Key><LastModified>")
                .append(changedAt)
                .append("</LastModified></Contents>"));
        return all.append("</ListBucketResult>").toString();
    }

    private void send(HttpExchange exchange, String key) throws IOException {
        byte @Nullable [] bytes = objects.get(key);
        if (bytes == null) {
            send(exchange, 404, "<Error><Code>NoSuchKey</Code></Error>".getBytes(StandardCharsets.UTF_8));
        } else {
            send(exchange, 200, bytes);
        }
    }

    private static void send(HttpExchange exchange, int status, byte[] bytes) throws IOException {
        exchange.getResponseHeaders().set("ETag", "\"" + "0".repeat(32) + "\"");
        exchange.sendResponseHeaders(status, bytes.length == 0 ? -1 : bytes.length);
        if (bytes.length > 0) {
            exchange.getResponseBody().write(bytes);
        }
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
