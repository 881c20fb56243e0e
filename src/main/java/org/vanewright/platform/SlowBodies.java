package org.vanewright.platform;

import jakarta.servlet.ServletException;
import java.io.IOException;
import java.net.SocketTimeoutException;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.catalina.connector.Request;
import org.apache.catalina.connector.Response;
import org.apache.catalina.valves.ValveBase;
import org.apache.coyote.ActionCode;
import org.apache.coyote.InputBuffer;
import org.apache.tomcat.util.net.ApplicationBufferHandler;
import org.springframework.boot.tomcat.servlet.TomcatServletWebServerFactory;
import org.springframework.boot.web.server.WebServerFactoryCustomizer;
import org.springframework.stereotype.Component;
import org.vanewright.platform.page.RequestPath;

/**
 * Hangs up on whoever sends the body of a request too slowly. The server's own limit is for the pause between two
 * bytes, so that a byte now and then would hold one of its threads for hours.
 */
@Component
class SlowBodies implements WebServerFactoryCustomizer<TomcatServletWebServerFactory> {
    /** As the server itself reads of what nobody asked for, so that the caller sees the answer. */
    private static final long MOST_LEFT_OVER = 40L * 1024 * 1024;

    /** A large file has more time as it comes, 100 kB in a second at least. */
    private static final long NANOS_PER_BYTE = 10_000;

    private final long limitNanos;
    private final List<LargeUploads> larger;

    SlowBodies(LimitSettings settings, List<LargeUploads> larger) {
        this.limitNanos = settings.bodyTime().toNanos();
        this.larger = larger;
    }

    @Override
    public void customize(TomcatServletWebServerFactory factory) {
        factory.addEngineValves(new Watch());
    }

    /** What cannot be read as a request has neither. */
    private boolean isLarge(Request request) {
        String method = request.getMethod();
        String path = RequestPath.of(request);
        return method != null && larger.stream().anyMatch(l -> l.accepts(method, path));
    }

    private final class Watch extends ValveBase {
        Watch() {
            super(true);
        }

        @Override
        public void invoke(Request request, Response response) throws IOException, ServletException {
            var plain = request.getCoyoteRequest();
            InputBuffer buffer = plain.getInputBuffer();
            Timed timed = new Timed(buffer, System.nanoTime() + limitNanos, isLarge(request) ? NANOS_PER_BYTE : 0);
            plain.setInputBuffer(timed);
            try {
                getNext().invoke(request, response);
                if (!drained(plain, timed)) {
                    plain.action(ActionCode.DISABLE_SWALLOW_INPUT, null);
                }
            } finally {
                plain.setInputBuffer(buffer);
            }
        }
    }

    /** Reads what the service left of a body, which the server would do without a limit; false where that fails. */
    private static boolean drained(org.apache.coyote.Request request, Timed body) {
        AtomicBoolean complete = new AtomicBoolean();
        request.action(ActionCode.REQUEST_BODY_FULLY_READ, complete);
        if (complete.get()) {
            return true;
        }
        if (body.late || request.hasExpectation()) {
            return false;
        }
        Part part = new Part();
        try {
            for (long read = 0; read <= MOST_LEFT_OVER; ) {
                int now = body.doRead(part);
                if (now < 0) {
                    return true;
                }
                read += now;
            }
        } catch (IOException e) {
            return false;
        }
        return false;
    }

    private static final class Timed implements InputBuffer {
        private final InputBuffer source;
        private final long nanosPerByte;
        private long end;
        private boolean late;

        Timed(InputBuffer source, long end, long nanosPerByte) {
            this.source = source;
            this.end = end;
            this.nanosPerByte = nanosPerByte;
        }

        @Override
        public int doRead(ApplicationBufferHandler handler) throws IOException {
            late = late || System.nanoTime() - end > 0;
            if (late) {
                throw new SocketTimeoutException("the body has not come in time");
            }
            int read = source.doRead(handler);
            end += Math.max(0, read) * nanosPerByte;
            return read;
        }

        @Override
        public int available() {
            return source.available();
        }
    }

    /** Where the server puts a part that nobody looks at. */
    private static final class Part implements ApplicationBufferHandler {
        private ByteBuffer bytes = ByteBuffer.allocate(0);

        @Override
        public void setByteBuffer(ByteBuffer buffer) {
            bytes = buffer;
        }

        @Override
        public ByteBuffer getByteBuffer() {
            return bytes;
        }

        @Override
        public void expand(int size) {
            // The server brings its own.
        }
    }
}
