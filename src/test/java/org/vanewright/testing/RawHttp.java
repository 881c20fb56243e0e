package org.vanewright.testing;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.SocketException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;

/** A connection of our own, for requests that no decent client would send. */
public final class RawHttp implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(30);

    private final Socket socket;

    /** @param origin such as {@code http://localhost:8080} */
    public RawHttp(String origin) {
        URI uri = URI.create(origin);
        try {
            socket = new Socket(uri.getHost(), uri.getPort());
            socket.setSoTimeout(Math.toIntExact(PATIENCE.toMillis()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * An answer.
     *
     * @param status 0 where the server closed without one
     */
    public record Answer(int status, List<String> headers, String body) {}

    /** Sends a request without a body; the lines are its request line and what headers it has beside the host. */
    public static Answer ask(String origin, String requestLine, String... headers) {
        try (RawHttp raw = new RawHttp(origin)) {
            String host = URI.create(origin).getAuthority();
            boolean own = List.of(headers).stream().anyMatch(h -> h.startsWith("Host:"));
            raw.send(requestLine + "\r\n" + (own ? "" : "Host: " + host + "\r\n") + "Connection: close\r\n"
                    + String.join(
                            "", List.of(headers).stream().map(h -> h + "\r\n").toList()) + "\r\n");
            return raw.answer();
        } catch (SocketException e) {
            return new Answer(0, List.of(), "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Each character becomes one byte. */
    public void send(String text) throws IOException {
        OutputStream out = socket.getOutputStream();
        out.write(text.getBytes(StandardCharsets.ISO_8859_1));
        out.flush();
    }

    /** Everything until the server closes. */
    public Answer answer() throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        InputStream in = socket.getInputStream();
        byte[] part = new byte[8192];
        for (int n = in.read(part); n >= 0; n = in.read(part)) {
            all.write(part, 0, n);
        }
        String text = all.toString(StandardCharsets.UTF_8);
        if (text.isEmpty()) {
            return new Answer(0, List.of(), "");
        }
        String[] halves = text.split("\r\n\r\n", 2);
        List<String> head = List.of(halves[0].split("\r\n", -1));
        int status = Integer.parseInt(head.get(0).split(" ", 3)[1]);
        return new Answer(status, head.subList(1, head.size()), halves.length == 2 ? halves[1] : "");
    }

    @Override
    public void close() throws IOException {
        socket.close();
    }
}
