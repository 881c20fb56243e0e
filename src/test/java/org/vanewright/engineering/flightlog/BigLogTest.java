package org.vanewright.engineering.flightlog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** A log of 300,000 rows in a heap that could not hold a quarter of it as objects. */
class BigLogTest {
    private static final int ROWS = 300_000;

    @Test
    void memoryDoesNotGrowWithTheLength() throws IOException, InterruptedException {
        Process child = new ProcessBuilder(List.of(
                        System.getProperty("java.home") + "/bin/java",
                        "-Xmx24m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        BigLog.class.getName(),
                        "" + ROWS))
                .redirectErrorStream(true)
                .start();
        String said = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(child.waitFor(60, TimeUnit.SECONDS)).as(said).isTrue();
        assertThat(child.exitValue()).as(said).isZero();
        String[] numbers = said.trim().split(" ");
        assertThat(numbers[0]).isEqualTo(String.valueOf(ROWS));
        assertThat(numbers[1]).as("bad rows").isEqualTo("0");
        assertThat(Integer.parseInt(numbers[2]))
                .as("a stall every 90 s")
                .isBetween(ROWS / 20 / 90 - 2, ROWS / 20 / 90 + 1);
    }
}
