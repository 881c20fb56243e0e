package org.vanewright.platform.files;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.vanewright.testing.SteppingClock;

class DiskFilesTest {
    private static final long LIMIT = 1_600_000;

    @TempDir
    private Path directory;

    private final SteppingClock clock = new SteppingClock();

    private DiskFiles process() {
        return new DiskFiles(directory, LIMIT, clock, path -> Files.newOutputStream(path));
    }

    private static KeptFile file(String text) {
        return new KeptFile("kite-é.csv", "text/csv;charset=UTF-8", true, text.getBytes(UTF_8));
    }

    private static String key(int i) {
        return String.format("%064x", i);
    }

    private List<Path> found() throws IOException {
        try (var all = Files.walk(directory).filter(Files::isRegularFile)) {
            return all.toList();
        }
    }

    @Test
    void whatOneProcessKeptTheNextOneFinds() throws Exception {
        process().write(key(1), file("a,b\n"));
        KeptFile again = process().read(key(1)).orElseThrow();
        assertThat(again.bytes()).isEqualTo("a,b\n".getBytes(UTF_8));
        assertThat(List.of(again.fileName(), again.type(), again.shown()))
                .containsExactly("kite-é.csv", "text/csv;charset=UTF-8", true);
        assertThat(process().read(key(2))).isEmpty();
        assertThatThrownBy(() -> process().read("../" + key(1))).isInstanceOf(IllegalArgumentException.class);
    }

    /** Every shorter file, and every file with one bit changed. */
    @Test
    void halfWrittenAndDamagedFilesAreNeverServed() throws Exception {
        process().write(key(1), file("a,b\n"));
        Path path = found().get(0);
        byte[] whole = Files.readAllBytes(path);
        for (int length = 0; length < whole.length; length++) {
            Files.write(path, Arrays.copyOf(whole, length));
            assertThat(process().read(key(1)))
                    .as("%d of %d bytes", length, whole.length)
                    .isEmpty();
            assertThat(path).doesNotExist();
        }
        Random random = new Random(7);
        for (int at = 0; at < whole.length; at++) {
            byte[] damaged = whole.clone();
            damaged[at] ^= (byte) (1 << random.nextInt(8));
            Files.write(path, damaged);
            assertThat(process().read(key(1))).as("byte %d", at).isEmpty();
        }
        Files.write(path, whole);
        assertThat(process().read(key(1))).isPresent();
        Path other = directory.resolve("00").resolve(key(2));
        Files.write(other, whole);
        assertThat(process().read(key(2))).as("under another key").isEmpty();
    }

    @Test
    void whatWasUsedLeastLatelyGoesFirst() throws Exception {
        DiskFiles disk = process();
        String text = "x".repeat(50_000);
        for (int i = 0; i < 60; i++) {
            disk.write(key(i), file(text));
            disk.read(key(0));
            clock.advance(Duration.ofSeconds(90));
        }
        assertThat(disk.read(key(0))).as("read all the time").isPresent();
        assertThat(disk.read(key(59))).as("the newest").isPresent();
        assertThat(disk.read(key(1))).as("the oldest").isEmpty();
        long held = 0;
        for (Path path : found()) {
            held += Files.size(path);
        }
        assertThat(held).isBetween(LIMIT / 2, LIMIT);
    }

    @Test
    void whatACrashLeftIsClearedAwayAndWhatIsNotOursStays() throws Exception {
        Files.createDirectories(directory.resolve("ab"));
        Path abandoned = directory.resolve("ab").resolve("ab".repeat(32) + "." + UUID.randomUUID() + ".part");
        Path atWork = directory.resolve("ab").resolve("ab".repeat(32) + "." + UUID.randomUUID() + ".part");
        Path foreign = directory.resolve("letter.txt");
        for (Path path : List.of(abandoned, atWork, foreign)) {
            Files.writeString(path, "x");
            Files.setLastModifiedTime(path, FileTime.from(clock.instant().minus(Duration.ofHours(1))));
        }
        Files.setLastModifiedTime(atWork, FileTime.from(clock.instant().minusSeconds(5)));
        process().write(key(1), file("a"));
        assertThat(abandoned).doesNotExist();
        assertThat(atWork).exists();
        assertThat(foreign).exists();
    }

    /** Four of them write, read and clear away in one small directory; each answer is whole and its own. */
    @Test
    void severalProcessesShareADirectory() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        List<Callable<Integer>> processes = IntStream.range(0, 4)
                .<Callable<Integer>>mapToObj(p -> () -> run(p))
                .toList();
        int hits = 0;
        for (Future<Integer> process : threads.invokeAll(processes)) {
            hits += process.get();
        }
        threads.shutdown();
        assertThat(hits).isPositive();
        assertThat(found()).noneMatch(p -> p.toString().endsWith(DiskFiles.UNFINISHED));
    }

    private int run(int process) throws IOException {
        DiskFiles disk = new DiskFiles(
                directory,
                LIMIT,
                Clock.fixed(Instant.parse("2026-01-02T03:04:05Z"), ZoneOffset.UTC),
                path -> Files.newOutputStream(path));
        Random random = new Random(process);
        int hits = 0;
        for (int i = 0; i < 300; i++) {
            int number = random.nextInt(60);
            String text = number + "x".repeat(40_000);
            var found = disk.read(key(number));
            if (found.isPresent()) {
                hits++;
                assertThat(found.get().bytes()).isEqualTo(text.getBytes(UTF_8));
            } else {
                disk.write(key(number), file(text));
            }
        }
        return hits;
    }
}
