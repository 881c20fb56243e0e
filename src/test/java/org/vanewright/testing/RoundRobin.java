package org.vanewright.testing;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Hands each request to the next of several servers. Who cannot be reached is passed over; who breaks off in the middle
 * is answered by 502, since nobody knows what became of the request.
 */
public final class RoundRobin implements Closeable {
    private static final Set<String> OWN =
            Set.of("connection", "content-length", "expect", "host", "upgrade", "transfer-encoding", "http2-settings");

    private volatile List<String> origins = List.of();
    private final AtomicInteger turn = new AtomicInteger();
    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final HttpServer server;

    RoundRobin() {
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 50);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        server.setExecutor(Executors.newCachedThreadPool(work -> {
            Thread thread = new Thread(work, "round-robin");
            thread.setDaemon(true);
            return thread;
        }));
        server.createContext("/", this::pass);
        server.start();
    }

    public String origin() {
        return "http://127.0.0.1:" + server.getAddress().getPort();
    }

    void serve(List<String> servers) {
        origins = List.copyOf(servers);
    }

    private void pass(HttpExchange exchange) throws IOException {
        try (exchange) {
            byte[] body = exchange.getRequestBody().readAllBytes();
            List<String> now = origins;
            int first = turn.getAndIncrement();
            for (int attempt = 0; attempt < now.size(); attempt++) {
                String origin = now.get(Math.floorMod(first + attempt, now.size()));
                try {
                    answer(
                            exchange,
                            client.send(request(exchange, origin, body), HttpResponse.BodyHandlers.ofByteArray()));
                    return;
                } catch (ConnectException e) {
                    // Not reached at all: the next one may have it.
                } catch (IOException e) {
                    exchange.sendResponseHeaders(502, -1);
                    return;
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                    return;
                }
            }
            exchange.sendResponseHeaders(503, -1);
        }
    }

    private static HttpRequest request(HttpExchange exchange, String origin, byte[] body) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(origin + exchange.getRequestURI()))
                .method(
                        exchange.getRequestMethod(),
                        body.length == 0 ? BodyPublishers.noBody() : BodyPublishers.ofByteArray(body));
        exchange.getRequestHeaders().forEach((name, values) -> {
            if (!OWN.contains(name.toLowerCase(Locale.ROOT))) {
                values.forEach(value -> request.header(name, value));
            }
        });
        return request.build();
    }

    private static void answer(HttpExchange exchange, HttpResponse<byte[]> response) throws IOException {
        response.headers().map().forEach((name, values) -> {
            if (!OWN.contains(name.toLowerCase(Locale.ROOT)) && !name.startsWith(":")) {
                exchange.getResponseHeaders().put(name, values);
            }
        });
        byte[] body = response.body();
        exchange.sendResponseHeaders(response.statusCode(), body.length == 0 ? -1 : body.length);
        if (body.length > 0) {
            exchange.getResponseBody().write(body);
        }
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
