package org.vanewright.benchmark.load;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The service as a process of its own, as it is delivered, but for limits on what one address may ask. */
final class ServiceUnderLoad implements AutoCloseable {
    private static final Pattern STARTED = Pattern.compile("Tomcat started on port (\\d+)");
    private static final Pattern READY = Pattern.compile("Started Vanewright");
    private static final Duration LONGEST_START = Duration.ofMinutes(5);
    private static final Pattern TOTAL = Pattern.compile("Total\\s+\\d+\\s+(\\d+)");

    private final Process process;
    private final Path log;
    private final Path directory;
    private final String origin;

    private ServiceUnderLoad(Process process, Path directory, Path log) {
        this.process = process;
        this.directory = directory;
        this.log = log;
        this.origin = awaitOrigin();
    }

    static ServiceUnderLoad start(LoadDatabase database, int heapMb) {
        try {
            Path directory = Files.createTempDirectory("load-service");
            Path info = Files.createDirectories(directory.resolve("classes/META-INF"));
            // As in the packaged service, whose version says that its generated files may be kept on disk.
            Files.writeString(
                    info.resolve("build-info.properties"), "build.version=1\nbuild.time=2026-01-02T03:04:05Z\n");
            Path log = directory.resolve("log.txt");
            List<String> command = new ArrayList<>(List.of(
                    java("java"),
                    "-Xmx" + heapMb + "m",
                    "-cp",
                    directory.resolve("classes") + File.pathSeparator + classPath(),
                    "org.vanewright.Vanewright",
                    "--server.port=" + System.getProperty("load.port", "0"),
                    "--spring.datasource.url=" + database.url(),
                    "--spring.datasource.username=" + database.user(),
                    "--spring.datasource.password=" + database.password(),
                    // All clients come from one address.
                    "--vanewright.limits.calculations-per-minute=1000000",
                    "--vanewright.limits.renders-per-minute=1000000"));
            command.addAll(
                    1, Arrays.asList(System.getProperty("load.jvm", "-Dload=1").split(" ")));
            Process process = new ProcessBuilder(command)
                    .directory(directory.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(log.toFile())
                    .start();
            Runtime.getRuntime().addShutdownHook(new Thread(process::destroyForcibly));
            return new ServiceUnderLoad(process, directory, log);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String java(String tool) {
        return Path.of(System.getProperty("java.home"), "bin", tool).toString();
    }

    /** Without the classes of tests and benchmarks, some of which would become part of the service. */
    private static String classPath() {
        return Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(entry -> Path.of(entry).toAbsolutePath())
                .filter(entry ->
                        !Files.isDirectory(entry) || Files.exists(entry.resolve("org/vanewright/Vanewright.class")))
                .map(Path::toString)
                .collect(Collectors.joining(File.pathSeparator));
    }

    private String awaitOrigin() {
        Instant giveUp = Instant.now().plus(LONGEST_START);
        while (process.isAlive() && Instant.now().isBefore(giveUp)) {
            String text = log();
            Matcher started = STARTED.matcher(text);
            if (READY.matcher(text).find() && started.find()) {
                return "http://127.0.0.1:" + started.group(1);
            }
            pause(Duration.ofMillis(200));
        }
        process.destroyForcibly();
        throw new IllegalStateException("the service did not start\n" + log());
    }

    static void pause(Duration time) {
        try {
            TimeUnit.MILLISECONDS.sleep(time.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    String origin() {
        return origin;
    }

    Path directory() {
        return directory;
    }

    /** What it has printed. */
    String log() {
        try {
            return Files.readString(log);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Kilobytes of what a full collection finds alive, without what is asked for meanwhile. */
    long heapKb() {
        Matcher total = TOTAL.matcher(jcmd("GC.class_histogram"));
        if (!total.find()) {
            throw new IllegalStateException("no figure of the heap");
        }
        return Long.parseLong(total.group(1)) / 1024;
    }

    /** Milliseconds of processor time that the process has had, which tell more than the clock where others want it, too. */
    long processorMillis() {
        return process.toHandle()
                .info()
                .totalCpuDuration()
                .orElse(Duration.ZERO)
                .toMillis();
    }

    /** Kilobytes of memory that the process holds. */
    long residentKb() {
        try {
            return Files.readAllLines(Path.of("/proc", Long.toString(process.pid()), "status")).stream()
                    .filter(line -> line.startsWith("VmRSS:"))
                    .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")))
                    .findFirst()
                    .orElse(0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String jcmd(String what) {
        try {
            Process asked = new ProcessBuilder(java("jcmd"), Long.toString(process.pid()), what)
                    .redirectErrorStream(true)
                    .start();
            String answer = new String(asked.getInputStream().readAllBytes());
            asked.waitFor();
            return answer;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** As a machine stops it, so that a database in a file is closed. */
    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(1, TimeUnit.MINUTES)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            process.destroyForcibly();
        }
    }
}
