package org.vanewright.platform.log;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.AppenderBase;
import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import jakarta.annotation.PreDestroy;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/**
 * Counts warnings and errors in the log under the name that Micrometer's own count has, {@code logback.events}. That one
 * looks at every event that no level lets through, too, which made each page dearer.
 */
@Component
public class LoggedEvents {
    private final Logger root;
    private final Appender appender;

    LoggedEvents(MeterRegistry meters) {
        LoggerContext context = (LoggerContext) LoggerFactory.getILoggerFactory();
        root = context.getLogger(org.slf4j.Logger.ROOT_LOGGER_NAME);
        appender = new Appender(counter(meters, "warn"), counter(meters, "error"));
        appender.setContext(context);
        appender.start();
        root.addAppender(appender);
    }

    private static Counter counter(MeterRegistry meters, String level) {
        return Counter.builder("logback.events")
                .description("Warnings and errors in the log")
                .baseUnit("events")
                .tag("level", level)
                .register(meters);
    }

    @PreDestroy
    void stop() {
        root.detachAppender(appender);
        appender.stop();
    }

    private static final class Appender extends AppenderBase<ILoggingEvent> {
        private final Counter warnings;
        private final Counter errors;

        Appender(Counter warnings, Counter errors) {
            this.warnings = warnings;
            this.errors = errors;
        }

        @Override
        protected void append(ILoggingEvent event) {
            if (event.getLevel().isGreaterOrEqual(Level.ERROR)) {
                errors.increment();
            } else if (event.getLevel().isGreaterOrEqual(Level.WARN)) {
                warnings.increment();
            }
        }
    }
}
