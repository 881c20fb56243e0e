package org.vanewright.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** Runs the outside programs that check our files. A missing one fails the test and names what to install. */
public final class Tools {
    private static final Map<String, String> PACKAGES = Map.ofEntries(
            Map.entry("pdftoppm", "poppler-utils"),
            Map.entry("pdftotext", "poppler-utils"),
            Map.entry("pdffonts", "poppler-utils"),
            Map.entry("pdfinfo", "poppler-utils"),
            Map.entry("qpdf", "qpdf"),
            Map.entry("rsvg-convert", "librsvg2-bin"),
            Map.entry("xmllint", "libxml2-utils"),
            Map.entry("admesh", "admesh"),
            Map.entry("tidy", "tidy"),
            Map.entry("/usr/bin/python3", "python3-ezdxf"));
    private static final int LIMIT_SECONDS = 60;

    private Tools() {}

    /**
     * Runs a command to its end.
     *
     * @return what it wrote, errors included
     * @throws AssertionError if it is not installed, takes over a minute, or ends with a status other than 0
     */
    public static String run(String... command) {
        Result result = runForResult(command);
        if (result.status() != 0) {
            throw new AssertionError(String.join(" ", command) + " ended with " + result.status() + ":\n"
                    + result.output() + missingModule(command[0], result.output()));
        }
        return result.output();
    }

    /** As {@link #run}, but any exit status is fine. */
    public static Result runForResult(String... command) {
        try {
            Path log = Files.createTempFile("tool", ".log");
            try {
                Process process = new ProcessBuilder(List.of(command))
                        .redirectErrorStream(true)
                        .redirectOutput(log.toFile())
                        .start();
                if (!process.waitFor(LIMIT_SECONDS, TimeUnit.SECONDS)) {
                    process.destroyForcibly();
                    throw new AssertionError(String.join(" ", command) + " took over " + LIMIT_SECONDS + " s");
                }
                // Some tools print bytes of the files they read: what is no text is no reason to fail.
                return new Result(process.exitValue(), new String(Files.readAllBytes(log), StandardCharsets.UTF_8));
            } finally {
                Files.deleteIfExists(log);
            }
        } catch (IOException e) {
            throw new AssertionError(
                    command[0] + " does not start; on Debian: apt-get install "
                            + PACKAGES.getOrDefault(command[0], command[0]),
                    e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError("interrupted", e);
        }
    }

    /** Writes bytes to a file for a tool to read. */
    public static Path file(Path directory, String name, byte[] content) {
        try {
            return Files.write(directory.resolve(name), content);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String missingModule(String program, String output) {
        return output.contains("ModuleNotFoundError") ? "\non Debian: apt-get install " + PACKAGES.get(program) : "";
    }

    /** How a program ended and what it wrote. */
    public record Result(int status, String output) {}
}
