package org.vanewright.testing;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.awaitility.Awaitility;

/** The service as a process of its own on a free port, from the class path of the tests. */
public final class ServiceProcess {
    private static final Pattern STARTED = Pattern.compile("Tomcat started on port (\\d+)");
    private static final Pattern READY = Pattern.compile("Started Vanewright");
    private static final Duration LONGEST_START = Duration.ofMinutes(4);

    private final Process process;
    private final Path log;

    private ServiceProcess(Process process, Path log) {
        this.process = process;
        this.log = log;
    }

    /**
     * Begins to start one.
     *
     * @param directory its own, where it runs, leaves its log and has its temporary files
     * @param wrapper what stands before {@code java} in the command
     */
    static ServiceProcess begin(Path directory, Map<String, String> settings, List<String> wrapper) {
        try {
            Files.createDirectories(directory.resolve("tmp"));
            Path info = Files.createDirectories(directory.resolve("classes/META-INF"));
            // As in the packaged service, whose version says that its generated files may be kept on disk.
            Files.writeString(
                    info.resolve("build-info.properties"), "build.version=1\nbuild.time=2026-01-02T03:04:05Z\n");
            Path log = directory.resolve("log.txt");
            List<String> command = new ArrayList<>(wrapper);
            command.addAll(List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-Xmx300m",
                    "-XX:TieredStopAtLevel=1",
                    "-Djava.io.tmpdir=" + directory.resolve("tmp"),
                    "-cp",
                    directory.resolve("classes") + File.pathSeparator + classPath(),
                    "org.vanewright.Vanewright",
                    "--server.port=0",
                    "--spring.profiles.active=test",
                    "--logging.level.org.springframework.boot=info"));
            settings.forEach((name, value) -> command.add("--" + name + "=" + value));
            Process process = new ProcessBuilder(command)
                    .directory(directory.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.appendTo(log.toFile()))
                    .start();
            Runtime.getRuntime().addShutdownHook(new Thread(process::destroyForcibly));
            return new ServiceProcess(process, log);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Test runners start from a jar that only names the real class path. */
    private static String classPath() {
        String tests = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return Arrays.stream(tests.split(File.pathSeparator))
                .map(entry -> Path.of(entry).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    /** Its address, once it serves. */
    String awaitOrigin() {
        Awaitility.await("the service starts")
                .atMost(LONGEST_START)
                .until(() -> !process.isAlive() || READY.matcher(log()).find());
        Matcher started = STARTED.matcher(log());
        if (!process.isAlive() || !started.find()) {
            throw new AssertionError("it did not start\n" + log());
        }
        return "http://127.0.0.1:" + started.group(1);
    }

    public long pid() {
        return process.pid();
    }

    /** What it has printed. */
    public String log() {
        try {
            return Files.readString(log, UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** SIGKILL: it gets no chance to tidy up. */
    public void kill() {
        process.destroyForcibly();
        process.onExit().join();
    }
}
