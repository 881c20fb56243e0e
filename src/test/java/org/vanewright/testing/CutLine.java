package org.vanewright.testing;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.jspecify.annotations.Nullable;

/** A line to a server that can be cut: what runs over it ends at once, and nobody gets through until it is mended. */
public final class CutLine implements Closeable {
    private final String host;
    private final int target;
    private final int port;
    private final Set<Socket> sockets = ConcurrentHashMap.newKeySet();
    private final ExecutorService threads = Executors.newCachedThreadPool(work -> {
        Thread thread = new Thread(work, "cut-line");
        thread.setDaemon(true);
        return thread;
    });
    private @Nullable ServerSocket door;

    CutLine(String host, int target) {
        this.host = host;
        this.target = target;
        this.port = open(0);
    }

    public int port() {
        return port;
    }

    private synchronized int open(int wanted) {
        try {
            ServerSocket opened = new ServerSocket();
            opened.setReuseAddress(true);
            opened.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), wanted));
            door = opened;
            threads.execute(() -> letIn(opened));
            return opened.getLocalPort();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public synchronized void cut() {
        shut(door);
        door = null;
        sockets.forEach(CutLine::shut);
        sockets.clear();
    }

    public void mend() {
        open(port);
    }

    private void letIn(ServerSocket from) {
        while (!from.isClosed()) {
            try {
                Socket near = from.accept();
                Socket far = new Socket(host, target);
                sockets.add(near);
                sockets.add(far);
                if (from.isClosed()) {
                    shut(near);
                    shut(far);
                }
                threads.execute(() -> copy(near, far));
                threads.execute(() -> copy(far, near));
            } catch (IOException e) {
                // Cut, or the server is gone: the next one who comes finds out for themselves.
            }
        }
    }

    private void copy(Socket from, Socket to) {
        try (InputStream in = from.getInputStream();
                OutputStream out = to.getOutputStream()) {
            in.transferTo(out);
        } catch (IOException e) {
            // Either end hung up.
            return;
        } finally {
            shut(from);
            shut(to);
            sockets.remove(from);
            sockets.remove(to);
        }
    }

    private static void shut(@Nullable Closeable open) {
        try {
            if (open != null) {
                open.close();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        cut();
        threads.shutdownNow();
    }
}
