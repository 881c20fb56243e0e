package org.vanewright.testing;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The service in a process of its own, with an empty database, set up by its first steward. */
public final class SecondInstance implements AutoCloseable {
    private static final Pattern SET_UP = Pattern.compile("(http://localhost:\\d+)(/set-up/[A-Za-z0-9_-]{43})");
    private static final int START_SECONDS = 180;

    private final Process process;
    private final Caller steward;
    private final String origin;

    private SecondInstance(Process process, String origin, Caller steward) {
        this.process = process;
        this.origin = origin;
        this.steward = steward;
    }

    /** @param options of its Java machine, such as a time zone */
    public static SecondInstance start(String... options) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(System.getProperty("java.home") + "/bin/java");
        command.addAll(List.of(options));
        command.addAll(
                List.of("-Xmx256m", "org.vanewright.Vanewright", "--server.port=0", "--spring.profiles.active=test"));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment()
                .put(
                        "CLASSPATH",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
        Process process = builder.start();
        try {
            Matcher link = setUpLink(process);
            Caller steward = new Caller(link.group(1));
            var joined = steward.postForm(
                    link.group(2),
                    Map.of(
                            "email", "first@other.example",
                            "name", "Sam of the other club",
                            "newPassword", "quite a long sentence 7 with kestrels",
                            "action", "save"));
            if (joined.statusCode() != 303) {
                throw new AssertionError("setting up gave " + joined.statusCode() + "\n" + joined.body());
            }
            steward.forgetToken();
            steward.signedIn();
            return new SecondInstance(process, link.group(1), steward);
        } catch (RuntimeException | Error e) {
            process.destroyForcibly();
            throw e;
        }
    }

    private static Matcher setUpLink(Process process) {
        CompletableFuture<Matcher> found = new CompletableFuture<>();
        Thread reading = new Thread(() -> read(process, found), "log of the second instance");
        reading.setDaemon(true);
        reading.start();
        try {
            return found.get(START_SECONDS, TimeUnit.SECONDS);
        } catch (ExecutionException | TimeoutException e) {
            throw new AssertionError("the second instance did not start", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    /** To its end, so that it never waits for somebody to read. */
    private static void read(Process process, CompletableFuture<Matcher> found) {
        StringBuilder all = new StringBuilder();
        try (BufferedReader log = process.inputReader(StandardCharsets.UTF_8)) {
            for (String line = log.readLine(); line != null; line = log.readLine()) {
                Matcher link = SET_UP.matcher(line);
                if (link.find()) {
                    found.complete(link);
                }
                if (!found.isDone()) {
                    all.append(line).append('\n');
                }
            }
        } catch (IOException e) {
            found.completeExceptionally(e);
        }
        found.completeExceptionally(new AssertionError("it ended:\n" + all));
    }

    public String origin() {
        return origin;
    }

    /** Its first steward, signed in. */
    public Caller steward() {
        return steward;
    }

    /** A caller who is not signed in. */
    public Caller visitor() {
        return new Caller(origin);
    }

    @Override
    public void close() {
        process.destroy();
    }
}
