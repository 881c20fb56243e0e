package org.vanewright.platform.log;

import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.joran.JoranConfigurator;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.util.LogbackMDCAdapter;
import ch.qos.logback.core.ConsoleAppender;
import ch.qos.logback.core.joran.spi.JoranException;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Writes events as the running service writes its log, which tests do otherwise. */
public final class ServiceLog {
    private ServiceLog() {}

    public static String written(List<ILoggingEvent> events) {
        LoggerContext context = new LoggerContext();
        context.setMDCAdapter(new LogbackMDCAdapter());
        JoranConfigurator configurator = new JoranConfigurator();
        configurator.setContext(context);
        try {
            configurator.doConfigure(Objects.requireNonNull(ServiceLog.class.getResource("/logback-spring.xml")));
        } catch (JoranException e) {
            throw new IllegalStateException(e);
        }
        ConsoleAppender<ILoggingEvent> console = (ConsoleAppender<ILoggingEvent>)
                Objects.requireNonNull(context.getLogger("ROOT").getAppender("CONSOLE"));
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        console.setOutputStream(written);
        events.forEach(console::doAppend);
        context.stop();
        return written.toString(StandardCharsets.UTF_8);
    }
}
