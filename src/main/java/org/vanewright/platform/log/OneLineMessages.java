package org.vanewright.platform.log;

import ch.qos.logback.classic.pattern.MessageConverter;
import ch.qos.logback.classic.spi.ILoggingEvent;
import org.jspecify.annotations.Nullable;

/** Writes each message on one line, whatever stands in its arguments. Named in {@code logback-spring.xml}. */
public final class OneLineMessages extends MessageConverter {
    @Override
    public @Nullable String convert(ILoggingEvent event) {
        String message = super.convert(event);
        return message == null ? null : LogText.escape(message);
    }
}
