package org.vanewright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ContainerEngineTest {
    @ParameterizedTest
    @ValueSource(
            strings = {"unix:///nowhere/docker.sock", "tcp://127.0.0.1", "npipe:////./pipe/x", "", "%", "tcp://[::1]:1"
            })
    void nothingThereIsNoEngine(String host) {
        assertThat(ContainerEngine.answers(host)).isFalse();
    }

    @Test
    void aSocketThatListensIsAnEngine(@TempDir Path directory) throws IOException {
        Path socket = directory.resolve("engine.sock");
        try (ServerSocketChannel server = ServerSocketChannel.open(StandardProtocolFamily.UNIX)) {
            server.bind(UnixDomainSocketAddress.of(socket));
            assertThat(ContainerEngine.answers("unix://" + socket)).isTrue();
        }
        assertThat(ContainerEngine.answers("unix://" + socket))
                .as("left behind by an engine that ended")
                .isFalse();
        try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            assertThat(ContainerEngine.answers("tcp://127.0.0.1:" + server.getLocalPort()))
                    .isTrue();
        }
    }
}
