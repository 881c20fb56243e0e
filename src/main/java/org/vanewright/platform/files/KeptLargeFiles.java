package org.vanewright.platform.files;

import io.micrometer.core.instrument.MeterRegistry;
import jakarta.annotation.PreDestroy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.info.BuildProperties;
import org.springframework.stereotype.Service;

/**
 * Keeps generated files that are too large for memory, on disk beside the others, by a key that names everything their bytes
 * depend on. Of many who ask for the same at the same time one makes it and the others wait. What could not be made is not
 * kept.
 */
@Service
public class KeptLargeFiles {
    private final Map<String, CompletableFuture<Path>> making = new ConcurrentHashMap<>();
    private final DiskFiles disk;
    private final FileMeters meters;
    private final @Nullable Path ownDirectory;

    /** Writes a file of that name, which is not there yet, or empty. */
    @FunctionalInterface
    public interface Maker {
        void write(Path file) throws IOException;
    }

    /** Classes that were never packaged have no version: what they make lies where it ends with the process. */
    @Autowired
    KeptLargeFiles(
            FileCacheSettings settings,
            ObjectProvider<BuildProperties> builds,
            MeterRegistry meters,
            Clock clock,
            WorkingFiles working)
            throws IOException {
        this.ownDirectory = builds.getIfAvailable() == null ? working.directory("kept") : null;
        Path directory = ownDirectory == null ? settings.directory() : ownDirectory;
        this.disk = new DiskFiles(directory, settings.disk().toBytes(), clock, Files::newOutputStream);
        this.meters = new FileMeters(meters);
    }

    KeptLargeFiles(DiskFiles disk, MeterRegistry meters) {
        this.ownDirectory = null;
        this.disk = disk;
        this.meters = new FileMeters(meters);
    }

    /**
     * A file.
     *
     * @param isKept whether it stays where it lies; otherwise it is the caller's to remove
     */
    public record Held(Path path, boolean isKept) {}

    /**
     * The file of that key.
     *
     * @param key 64 lower-case hexadecimal digits
     * @param admission asked before the file is made; what it throws goes to this caller only
     * @throws IOException where there is no room for it; nothing is left then
     */
    public Held get(String key, Runnable admission, Maker maker) throws IOException {
        while (true) {
            Optional<Path> there = disk.place(key);
            if (there.isPresent()) {
                meters.diskHit();
                return new Held(there.get(), true);
            }
            CompletableFuture<Path> own = new CompletableFuture<>();
            CompletableFuture<Path> others = making.putIfAbsent(key, own);
            if (others == null) {
                return lead(key, own, admission, maker);
            }
            follow(others);
        }
    }

    /** Where whoever makes it fails, the next one tries. */
    private static void follow(CompletableFuture<Path> others) {
        try {
            others.join();
        } catch (CompletionException e) {
            return;
        }
    }

    private Held lead(String key, CompletableFuture<Path> own, Runnable admission, Maker maker) throws IOException {
        try {
            Optional<Path> meanwhile = disk.place(key);
            if (meanwhile.isPresent()) {
                return new Held(meanwhile.get(), true);
            }
            meters.miss();
            admission.run();
            Held held = made(key, maker);
            own.complete(held.path());
            return held;
        } finally {
            making.remove(key, own);
            // Wakes those who wait, where it was not made.
            own.completeExceptionally(new IllegalStateException("the file could not be made"));
        }
    }

    private Held made(String key, Maker maker) throws IOException {
        Path part = disk.unfinished(key);
        boolean whole = false;
        try {
            boolean roomFor = meters.timed(() -> {
                maker.write(part);
                return disk.mayHold(Files.size(part));
            });
            whole = true;
            return roomFor ? new Held(disk.take(key, part), true) : new Held(part, false);
        } finally {
            if (!whole) {
                Files.deleteIfExists(part);
            }
        }
    }

    @PreDestroy
    void leave() throws IOException {
        if (ownDirectory != null) {
            WorkingFiles.remove(ownDirectory);
        }
    }
}
