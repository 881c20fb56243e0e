package org.vanewright.platform.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.micrometer.core.instrument.simple.SimpleMeterRegistry;
import java.io.IOException;
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
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptLargeFilesTest {
    private static final String KEY = "cd".repeat(32);
    private static final Runnable ADMITTED = () -> {};

    @TempDir
    private Path directory;

    private final AtomicInteger made = new AtomicInteger();

    private KeptLargeFiles files(long limitBytes) {
        DiskFiles disk = new DiskFiles(directory, limitBytes, Clock.systemUTC(), Files::newOutputStream);
        return new KeptLargeFiles(disk, new SimpleMeterRegistry());
    }

    private void write(Path file) throws IOException {
        made.incrementAndGet();
        Files.writeString(file, "a kit");
    }

    private List<Path> lying() throws IOException {
        try (Stream<Path> all = Files.walk(directory)) {
            return all.filter(Files::isRegularFile).toList();
        }
    }

    @Test
    void aHundredWhoAskAtOnceGetOneFileMadeOnce() throws Exception {
        KeptLargeFiles files = files(1_000_000);
        CountDownLatch allAsked = new CountDownLatch(100);
        ExecutorService threads = Executors.newFixedThreadPool(100);
        List<Future<KeptLargeFiles.Held>> answers = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            answers.add(threads.submit(() -> {
                allAsked.countDown();
                return files.get(KEY, ADMITTED, path -> {
                    await(allAsked);
                    write(path);
                });
            }));
        }
        for (Future<KeptLargeFiles.Held> answer : answers) {
            assertThat(answer.get().isKept()).isTrue();
            assertThat(answer.get().path()).hasContent("a kit");
        }
        threads.shutdown();
        assertThat(made).hasValue(1);
        assertThat(files(1_000_000).get(KEY, ADMITTED, this::write).path())
                .as("and stays for the next start")
                .hasContent("a kit");
        assertThat(made).hasValue(1);
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
    void whatCouldNotBeMadeLeavesNothingAndIsTriedAgain() throws IOException {
        KeptLargeFiles files = files(1_000_000);
        assertThatThrownBy(() -> files.get(KEY, ADMITTED, path -> {
                    Files.writeString(path, "half");
                    throw new IOException("no room");
                }))
                .isInstanceOf(IOException.class)
                .hasMessage("no room");
        assertThat(lying()).isEmpty();
        assertThat(files.get(KEY, ADMITTED, this::write).path()).hasContent("a kit");
    }

    @Test
    void whoIsNotAdmittedIsRefusedBeforeAnythingIsMade() throws IOException {
        KeptLargeFiles files = files(1_000_000);
        assertThatThrownBy(() -> files.get(
                        KEY,
                        () -> {
                            throw new IllegalStateException("too many");
                        },
                        this::write))
                .hasMessage("too many");
        assertThat(made).hasValue(0);
        files.get(KEY, ADMITTED, this::write);
        assertThat(files.get(
                                KEY,
                                () -> {
                                    throw new AssertionError("what is kept is for everybody");
                                },
                                this::write)
                        .path())
                .hasContent("a kit");
    }

    @Test
    void whatWouldFillTheDirectoryIsTheCallersAlone() throws IOException {
        KeptLargeFiles.Held held = files(16).get(KEY, ADMITTED, this::write);
        assertThat(held.isKept()).isFalse();
        assertThat(held.path()).hasContent("a kit");
        Files.delete(held.path());
        assertThat(lying()).isEmpty();
    }

    @Test
    void oldOnesMakeRoom() throws IOException {
        KeptLargeFiles files = files(160);
        for (int i = 0; i < 60; i++) {
            files.get(String.format("%064x", i), ADMITTED, this::write);
        }
        long bytes = 0;
        for (Path path : lying()) {
            bytes += Files.size(path);
        }
        assertThat(bytes).isBetween(5L, 160L);
    }
}
