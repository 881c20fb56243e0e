package org.vanewright.platform.log;

import static org.assertj.core.api.Assertions.assertThat;

import ch.qos.logback.classic.LoggerContext;
import ch.qos.logback.classic.joran.JoranConfigurator;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.util.LogbackMDCAdapter;
import ch.qos.logback.core.ConsoleAppender;
import ch.qos.logback.core.joran.spi.JoranException;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Logs hostile text through the configuration the service runs with. */
class LogEscapingTest {
    private static final String FORGED = "2026-01-01T00:00:00.000Z  INFO forged";

    private final LoggerContext context = new LoggerContext();
    private final ByteArrayOutputStream written = new ByteArrayOutputStream();

    @BeforeEach
    void configure() throws JoranException {
        context.setMDCAdapter(new LogbackMDCAdapter());
        JoranConfigurator configurator = new JoranConfigurator();
        configurator.setContext(context);
        configurator.doConfigure(Objects.requireNonNull(LogEscapingTest.class.getResource("/logback-spring.xml")));
        ConsoleAppender<ILoggingEvent> console = (ConsoleAppender<ILoggingEvent>)
                Objects.requireNonNull(context.getLogger("ROOT").getAppender("CONSOLE"));
        console.setOutputStream(written);
    }

    @AfterEach
    void stop() {
        context.stop();
    }

    private String log() {
        return written.toString(StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"\n", "\r", "\r\n", "\u0085", "\u2028", "\u2029", "\u000B", "\f", "\u001B[2J", "\u202E", "\0"})
    void aMessageStaysOnOneLineWhateverItsArgumentsHold(String hostile) {
        context.getLogger("a").warn("refused {}", "name" + hostile + FORGED);

        String line = log().stripTrailing();
        assertThat(line.lines()).hasSize(1);
        assertThat(line.codePoints().skip(line.indexOf("refused")))
                .as("nothing that moves a terminal or turns the direction")
                .allMatch(c -> Character.getType(c) != Character.CONTROL && c != 0x202E && c != 0x2028 && c != 0x2029);
        assertThat(line).contains("refused name\\u").endsWith(FORGED);
    }

    @Test
    void messagesOfExceptionsAndTheirCausesStayOnTheirLines() {
        RuntimeException cause = new IllegalStateException("inner\r" + FORGED);
        RuntimeException outer = new IllegalArgumentException("outer\n" + FORGED, cause);
        outer.addSuppressed(new IllegalStateException("beside\u2028" + FORGED));

        context.getLogger("a").error("failed", outer);

        assertThat(log().split("\\R", -1)).noneMatch(line -> line.startsWith(FORGED));
        assertThat(log())
                .contains("IllegalArgumentException: outer\\u000A" + FORGED)
                .contains("Caused by: java.lang.IllegalStateException: inner\\u000D" + FORGED)
                .contains("Suppressed: java.lang.IllegalStateException: beside\\u2028" + FORGED)
                .contains("at org.vanewright.platform.log.LogEscapingTest");
    }

    @Test
    void plainTextOfAnyScriptIsLoggedAsItIs() {
        context.getLogger("a").info("Flügel Τομή 翼 🛩 a\\b");

        assertThat(log()).contains("Flügel Τομή 翼 🛩 a\\b");
    }

    @Test
    void halvesOfPairsAreWrittenAsTheirCode() {
        assertThat(LogText.escape("a\uD800b")).isEqualTo("a\\uD800b");
    }
}
