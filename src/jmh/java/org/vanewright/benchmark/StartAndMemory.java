package org.vanewright.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Starts what {@code mvn package} has made as README says, with the demo's data: seconds until it is ready and the
 * processor's seconds until then, and the resident memory (Linux) then and after pages were asked for.
 */
final class StartAndMemory {
    private static final Duration LONGEST = Duration.ofMinutes(5);
    private static final List<String> PAGES =
            List.of("/", "/airframes", "/devices", "/layouts", "/campaigns", "/evidence", "/search?q=vane");
    private static final int ROUNDS = 20;
    private static final List<String> SMALL = List.of("-Xmx256m", "-XX:+UseSerialGC");
    private static final String ARCHIVE = "-XX:SharedArchiveFile=target/service/vanewright.jsa";

    private final HttpClient client = HttpClient.newHttpClient();
    private final Path project;
    private final Path data;
    private final int port;

    private StartAndMemory(Path project, Path data) throws IOException {
        this.project = project;
        this.data = data;
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
    }

    /** @param project where {@code target} is */
    static String table(Path project) throws IOException, InterruptedException {
        StringBuilder table = new StringBuilder(
                "\nstart with demo data         ready, s   processor, s   resident then, MB   after pages, MB\n");
        for (boolean quick : new boolean[] {true, false}) {
            List<String> options = new ArrayList<>(SMALL);
            options.add(ARCHIVE);
            if (quick) {
                options.add("-XX:TieredStopAtLevel=1");
            }
            Path data = Files.createTempDirectory("start");
            try {
                StartAndMemory start = new StartAndMemory(project.toAbsolutePath(), data);
                table.append(start.row(quick ? "first" : "first, both compilers", options));
                table.append(start.row(quick ? "again" : "again, both compilers", options));
            } finally {
                remove(data);
            }
        }
        return table.toString();
    }

    private String row(String name, List<String> options) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-jar", jar(), "--spring.profiles.active=demo", "--server.port=" + port));
        command.add("--vanewright.files.directory=" + data.resolve("files"));
        command.add("--spring.datasource.url=jdbc:h2:file:" + data.resolve("vanewright")
                + ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_ON_EXIT=FALSE");
        long begin = System.nanoTime();
        Process process = new ProcessBuilder(command)
                .directory(project.toFile())
                .redirectErrorStream(true)
                .redirectOutput(data.resolve("log").toFile())
                .start();
        try {
            while (status("/actuator/health/readiness") != 200) {
                if (!process.isAlive() || System.nanoTime() - begin > LONGEST.toNanos()) {
                    throw new IOException("it did not start: " + Files.readString(data.resolve("log")));
                }
                Thread.sleep(20);
            }
            double ready = (System.nanoTime() - begin) / 1e9;
            double processor =
                    process.info().totalCpuDuration().orElse(Duration.ZERO).toMillis() / 1e3;
            long then = residentMb(process);
            for (int i = 0; i < ROUNDS; i++) {
                for (String page : PAGES) {
                    if (status(page) != 200) {
                        throw new IOException("no answer from " + page);
                    }
                }
            }
            return String.format(
                    Locale.ROOT, "%-26s %10.2f %14.2f %19d %17d%n", name, ready, processor, then, residentMb(process));
        } finally {
            process.destroy();
            process.waitFor();
        }
    }

    private int status(String path) throws InterruptedException {
        try {
            HttpRequest request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                    .build();
            return client.send(request, BodyHandlers.discarding()).statusCode();
        } catch (IOException e) {
            return 0;
        }
    }

    private String jar() throws IOException {
        Path service = project.resolve("target/service");
        try (Stream<Path> files = Files.list(service)) {
            Path jar = files.filter(file -> file.toString().endsWith(".jar"))
                    .findFirst()
                    .orElseThrow(() -> new IOException("no jar in " + service));
            return project.relativize(jar).toString();
        }
    }

    private static long residentMb(Process process) throws IOException {
        Path status = Path.of("/proc", String.valueOf(process.pid()), "status");
        if (!Files.exists(status)) {
            return -1;
        }
        try (Stream<String> lines = Files.lines(status)) {
            return lines.filter(line -> line.startsWith("VmRSS:"))
                            .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")))
                            .sum()
                    / 1024;
        }
    }

    private static void remove(Path directory) throws IOException {
        try (Stream<Path> files = Files.walk(directory)) {
            files.sorted(Comparator.reverseOrder()).forEach(file -> {
                try {
                    Files.delete(file);
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
        }
    }
}
