package org.vanewright.platform.log;

import ch.qos.logback.classic.spi.IThrowableProxy;
import ch.qos.logback.classic.spi.StackTraceElementProxy;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** An exception with its message, and those of its causes, on one line. */
record OneLineThrowable(IThrowableProxy thrown) implements IThrowableProxy {
    @Override
    public @Nullable String getMessage() {
        String message = thrown.getMessage();
        return message == null ? null : LogText.escape(message);
    }

    @Override
    public @Nullable String getOverridingMessage() {
        String message = thrown.getOverridingMessage();
        return message == null ? null : LogText.escape(message);
    }

    @Override
    public String getClassName() {
        return thrown.getClassName();
    }

    @Override
    public StackTraceElementProxy[] getStackTraceElementProxyArray() {
        return thrown.getStackTraceElementProxyArray();
    }

    @Override
    public int getCommonFrames() {
        return thrown.getCommonFrames();
    }

    @Override
    public @Nullable IThrowableProxy getCause() {
        IThrowableProxy cause = thrown.getCause();
        return cause == null ? null : new OneLineThrowable(cause);
    }

    @Override
    public IThrowableProxy[] getSuppressed() {
        IThrowableProxy[] suppressed = thrown.getSuppressed();
        return suppressed == null
                ? new IThrowableProxy[0]
                : Arrays.stream(suppressed).map(OneLineThrowable::new).toArray(IThrowableProxy[]::new);
    }

    @Override
    public boolean isCyclic() {
        return thrown.isCyclic();
    }
}
