package org.vanewright.platform.log;

import ch.qos.logback.classic.spi.IThrowableProxy;
import org.springframework.boot.logging.logback.ExtendedWhitespaceThrowableProxyConverter;

/** Writes stack traces whose messages stay on one line each. Named in {@code logback-spring.xml}. */
public final class OneLineExceptions extends ExtendedWhitespaceThrowableProxyConverter {
    @Override
    protected String throwableProxyToString(IThrowableProxy thrown) {
        return super.throwableProxyToString(new OneLineThrowable(thrown));
    }
}
