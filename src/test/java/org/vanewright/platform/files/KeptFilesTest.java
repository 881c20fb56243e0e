package org.vanewright.platform.files;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptFilesTest {
    private static final String KEY = "ab".repeat(32);
    private static final Runnable ADMITTED = () -> {};

    private final SimpleMeterRegistry meters = new SimpleMeterRegistry();
    private final KeptFiles files = new KeptFiles(1_000_000, null, meters);
    private final AtomicInteger made = new AtomicInteger();

    private Supplier<KeptFile> text(String text) {
        return () -> {
            made.incrementAndGet();
            return new KeptFile("kite.csv", "text/csv", false, text.getBytes(UTF_8));
        };
    }

    private double count(String name, String... tags) {
        return meters.get(name).tags(tags).counter().count();
    }

    /** A hundred threads that all ask while the first is still at it. */
    @Test
    void aHundredWhoAskAtOnceGetOneFileMadeOnce() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch allAsked = new CountDownLatch(100);
        ExecutorService threads = Executors.newFixedThreadPool(100);
        Supplier<KeptFile> slow = () -> {
            begun.countDown();
            await(allAsked);
            return text("once").get();
        };
        List<Future<KeptFile>> answers = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            answers.add(threads.submit(() -> {
                allAsked.countDown();
                return files.get(KEY, ADMITTED, slow);
            }));
        }
        await(begun);
        for (Future<KeptFile> answer : answers) {
            assertThat(answer.get().bytes()).isEqualTo("once".getBytes(UTF_8));
        }
        threads.shutdown();
        assertThat(made).hasValue(1);
        assertThat(count("vanewright.files.misses")).isEqualTo(1);
        assertThat(count("vanewright.files.hits", "tier", "memory")).isEqualTo(99);
        assertThat(meters.get("vanewright.files.renders")
                        .tag("outcome", "made")
                        .timer()
                        .count())
                .isEqualTo(1);
        assertThat(meters.get("vanewright.files.memory").gauge().value()).isGreaterThan(4);
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(30, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    @Test
    void whatCouldNotBeMadeIsTriedAgain() {
        assertThatThrownBy(() -> files.get(KEY, ADMITTED, () -> {
                    throw new IllegalArgumentException("no such row");
                }))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no such row");
        assertThat(files.get(KEY, ADMITTED, text("now")).bytes()).isEqualTo("now".getBytes(UTF_8));
        assertThat(meters.get("vanewright.files.renders")
                        .tag("outcome", "failed")
                        .timer()
                        .count())
                .isEqualTo(1);
    }

    @Test
    void anErrorLeavesNobodyWaiting() {
        assertThatThrownBy(() -> files.get(KEY, ADMITTED, () -> {
                    throw new StackOverflowError();
                }))
                .isInstanceOf(StackOverflowError.class);
        assertThat(files.get(KEY, ADMITTED, text("now")).bytes()).isEqualTo("now".getBytes(UTF_8));
    }

    /** Who is refused must not take the others with them. */
    @Test
    void oneWhoIsNotAdmittedIsRefusedAloneAndNobodyForWhatIsKept() throws Exception {
        CountDownLatch asked = new CountDownLatch(1);
        ExecutorService thread = Executors.newSingleThreadExecutor();
        List<Future<KeptFile>> other = new ArrayList<>();
        assertThatThrownBy(() -> files.get(
                        KEY,
                        () -> {
                            other.add(thread.submit(() -> {
                                asked.countDown();
                                return files.get(KEY, ADMITTED, text("theirs"));
                            }));
                            await(asked);
                            throw new IllegalStateException("too many");
                        },
                        text("mine")))
                .hasMessage("too many");
        assertThat(other.get(0).get().bytes()).isEqualTo("theirs".getBytes(UTF_8));
        thread.shutdown();
        Runnable never = () -> {
            throw new IllegalStateException("too many");
        };
        assertThat(files.get(KEY, never, text("mine")).bytes()).isEqualTo("theirs".getBytes(UTF_8));
        assertThat(made).hasValue(1);
    }

    @Test
    void aFileMayBeMadeOfOthers() {
        KeptFile kit = files.get(KEY, ADMITTED, () -> files.get("cd".repeat(32), ADMITTED, text("part")));
        assertThat(kit.bytes()).isEqualTo("part".getBytes(UTF_8));
        assertThat(made).hasValue(1);
    }

    @Test
    void noMoreIsHeldInMemoryThanAllowed() {
        for (int i = 0; i < 300; i++) {
            files.get(String.format("%064x", i), ADMITTED, text("x".repeat(10_000)));
        }
        assertThat(meters.get("vanewright.files.memory").gauge().value()).isBetween(500_000.0, 1_000_000.0);
    }

    @Test
    void aDiskThatFillsUpCostsNothingButTime(@TempDir Path directory) throws Exception {
        DiskFiles full = new DiskFiles(
                directory, 1_000_000, Clock.systemUTC(), path -> new FullDisk(Files.newOutputStream(path), 3));
        KeptFiles onFull = new KeptFiles(1_000_000, full, meters);
        assertThat(onFull.get(KEY, ADMITTED, text("all of it")).bytes()).isEqualTo("all of it".getBytes(UTF_8));
        assertThat(onFull.get(KEY, ADMITTED, text("again")).bytes()).isEqualTo("all of it".getBytes(UTF_8));
        assertThat(count("vanewright.files.disk.failures")).isEqualTo(1);
        try (var left = Files.walk(directory).filter(Files::isRegularFile)) {
            assertThat(left).isEmpty();
        }
    }

    @Test
    void aDirectoryThatCannotBeMadeCostsNothingButTime(@TempDir Path directory) throws Exception {
        Path file = Files.writeString(directory.resolve("file"), "no directory");
        DiskFiles nowhere =
                new DiskFiles(file.resolve("below"), 1_000_000, Clock.systemUTC(), path -> Files.newOutputStream(path));
        KeptFiles there = new KeptFiles(1_000_000, nowhere, meters);
        assertThat(there.get(KEY, ADMITTED, text("all of it")).bytes()).isEqualTo("all of it".getBytes(UTF_8));
    }
}
