package org.vanewright.platform.files;

import com.github.benmanes.caffeine.cache.AsyncCache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.info.BuildProperties;
import org.springframework.stereotype.Service;

/**
 * Keeps generated files in memory, and below that on disk, by a key that names everything their bytes depend on. Of
 * many who ask for the same at the same time one makes it and the others wait. What could not be made is not kept.
 */
@Service
@EnableConfigurationProperties(FileCacheSettings.class)
public class KeptFiles {
    private static final Logger LOG = LoggerFactory.getLogger(KeptFiles.class);

    private final AsyncCache<String, KeptFile> memory;
    private final @Nullable DiskFiles disk;
    private final FileMeters meters;
    private volatile boolean diskWorked = true;

    /** Classes that were never packaged have no version, and what they make may differ at the next start: no disk. */
    @Autowired
    KeptFiles(FileCacheSettings settings, ObjectProvider<BuildProperties> builds, MeterRegistry meters, Clock clock) {
        this(
                settings.memoryBytes(),
                builds.getIfAvailable() == null || settings.disk().toBytes() == 0
                        ? null
                        : new DiskFiles(
                                settings.directory(),
                                settings.disk().toBytes(),
                                clock,
                                path -> Files.newOutputStream(path, StandardOpenOption.CREATE_NEW)),
                meters);
    }

    KeptFiles(long memoryBytes, @Nullable DiskFiles disk, MeterRegistry meters) {
        this.memory = Caffeine.newBuilder()
                .maximumWeight(memoryBytes)
                .weigher((String key, KeptFile file) -> file.weight())
                .executor(Runnable::run)
                .buildAsync();
        this.disk = disk;
        this.meters = new FileMeters(meters);
        Gauge.builder("vanewright.files.memory", memory, KeptFiles::bytesIn)
                .description("Bytes of generated files kept in memory")
                .baseUnit("bytes")
                .register(meters);
    }

    private static double bytesIn(AsyncCache<String, KeptFile> memory) {
        return memory.synchronous()
                .policy()
                .eviction()
                .map(e -> (double) e.weightedSize().orElse(0))
                .orElse(0.0);
    }

    /**
     * The file of that key.
     *
     * @param key 64 lower-case hexadecimal digits
     * @param admission asked before the file is made; what it throws goes to this caller only
     * @param make makes the file; may itself ask for files of other keys
     */
    public KeptFile get(String key, Runnable admission, Supplier<KeptFile> make) {
        while (true) {
            CompletableFuture<KeptFile> own = new CompletableFuture<>();
            CompletableFuture<KeptFile> held = memory.asMap().putIfAbsent(key, own);
            if (held == null) {
                return lead(key, own, admission, make);
            }
            Optional<KeptFile> others = follow(held);
            if (others.isPresent()) {
                meters.memoryHit();
                return others.get();
            }
        }
    }

    /** Nothing where whoever should have made it was not admitted. */
    private static Optional<KeptFile> follow(CompletableFuture<KeptFile> held) {
        try {
            return Optional.of(held.join());
        } catch (CompletionException e) {
            if (e.getCause() instanceof NotAdmitted) {
                return Optional.empty();
            }
            if (e.getCause() instanceof RuntimeException failure) {
                throw failure;
            }
            throw e;
        }
    }

    private KeptFile lead(String key, CompletableFuture<KeptFile> own, Runnable admission, Supplier<KeptFile> make) {
        try {
            Optional<KeptFile> stored = fromDisk(key);
            KeptFile file = stored.isPresent() ? stored.get() : made(own, admission, make);
            own.complete(file);
            if (stored.isEmpty()) {
                toDisk(key, file);
            }
            return file;
        } finally {
            // A future that is not complete here failed; the cache lets go of it.
            own.completeExceptionally(new IllegalStateException("the file could not be made"));
        }
    }

    private KeptFile made(CompletableFuture<KeptFile> own, Runnable admission, Supplier<KeptFile> make) {
        meters.miss();
        try {
            admission.run();
        } catch (RuntimeException refused) {
            own.completeExceptionally(new NotAdmitted());
            throw refused;
        }
        try {
            return meters.render(make);
        } catch (RuntimeException failure) {
            own.completeExceptionally(failure);
            throw failure;
        }
    }

    private Optional<KeptFile> fromDisk(String key) {
        if (disk == null) {
            return Optional.empty();
        }
        try {
            Optional<KeptFile> file = disk.read(key);
            file.ifPresent(f -> meters.diskHit());
            return file;
        } catch (IOException e) {
            failed(e);
            return Optional.empty();
        }
    }

    private void toDisk(String key, KeptFile file) {
        if (disk == null) {
            return;
        }
        try {
            disk.write(key, file);
            diskWorked = true;
        } catch (IOException e) {
            failed(e);
        }
    }

    /** A full or unwritable disk costs time only. It is said once, until it works again. */
    private void failed(IOException e) {
        meters.diskFailure();
        if (diskWorked) {
            diskWorked = false;
            LOG.warn("generated files cannot be kept on disk, but in memory: {}", e.toString());
        }
    }

    private static final class NotAdmitted extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NotAdmitted() {
            super("not admitted", null, false, false);
        }
    }
}
