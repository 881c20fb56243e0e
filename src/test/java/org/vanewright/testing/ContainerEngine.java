package org.vanewright.testing;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.StandardProtocolFamily;
import java.net.URI;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.SocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;

/** A look, without waiting, whether a container engine is there at all. */
final class ContainerEngine {
    private static final String USUAL_HOST = "unix:///var/run/docker.sock";
    private static final int CONNECT_MILLIS = 1000;

    private ContainerEngine() {}

    static boolean answers() {
        return answers(System.getenv().getOrDefault("DOCKER_HOST", USUAL_HOST));
    }

    /** @param host as in {@code DOCKER_HOST} */
    static boolean answers(String host) {
        try {
            URI uri = URI.create(host);
            return "unix".equals(uri.getScheme()) ? unix(Path.of(uri.getPath())) : tcp(uri);
        } catch (IllegalArgumentException | IOException e) {
            return false;
        }
    }

    private static boolean unix(Path socket) throws IOException {
        if (!Files.exists(socket)) {
            return false;
        }
        try (SocketChannel channel = SocketChannel.open(StandardProtocolFamily.UNIX)) {
            return channel.connect(UnixDomainSocketAddress.of(socket));
        }
    }

    private static boolean tcp(URI uri) throws IOException {
        if (uri.getHost() == null || uri.getPort() < 0) {
            return false;
        }
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress(uri.getHost(), uri.getPort()), CONNECT_MILLIS);
            return socket.isConnected();
        }
    }
}
