package org.vanewright.platform.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.springframework.util.FileSystemUtils;

/**
 * Directories for what is too large for memory while it is made: beside the generated files, since elsewhere temporary files
 * may lie in memory.
 */
@Component
public class WorkingFiles {
    private static final Logger LOG = LoggerFactory.getLogger(WorkingFiles.class);
    private static final String PREFIX = "vanewright-working-";
    private static final Duration ABANDONED = Duration.ofDays(1);

    private final FileCacheSettings settings;
    private final Clock clock;

    WorkingFiles(FileCacheSettings settings, Clock clock) {
        this.settings = settings;
        this.clock = clock;
    }

    /** A new directory, which the caller removes; what processes that died left there goes, too. */
    public Path directory(String purpose) throws IOException {
        Path place = place();
        return place == null
                ? Files.createTempDirectory(PREFIX + purpose)
                : Files.createTempDirectory(place, PREFIX + purpose + "-");
    }

    /** A new empty file, as {@link #directory}. */
    private Path file(String purpose) throws IOException {
        Path place = place();
        return place == null
                ? Files.createTempFile(PREFIX + purpose, null)
                : Files.createTempFile(place, PREFIX + purpose + "-", null);
    }

    /**
     * A new file that was written, which the caller removes.
     *
     * @throws IOException where there is no room for it; nothing is left then
     */
    public Path written(String purpose, KeptLargeFiles.Maker maker) throws IOException {
        Path file = file(purpose);
        try {
            maker.write(file);
            return file;
        } catch (IOException | RuntimeException e) {
            Files.deleteIfExists(file);
            throw e;
        }
    }

    private @Nullable Path place() {
        if (settings.disk().toBytes() > 0) {
            try {
                Files.createDirectories(settings.directory());
                sweep();
                return settings.directory();
            } catch (IOException e) {
                LOG.warn("nothing can be written to {}: {}", settings.directory(), e.toString());
            }
        }
        return null;
    }

    private void sweep() throws IOException {
        Instant before = clock.instant().minus(ABANDONED);
        List<Path> left;
        try (Stream<Path> entries = Files.list(settings.directory())) {
            left = entries.filter(e -> String.valueOf(e.getFileName()).startsWith(PREFIX))
                    .toList();
        }
        for (Path each : left) {
            if (Files.getLastModifiedTime(each).toInstant().isBefore(before)) {
                remove(each);
            }
        }
    }

    /** With everything in it. */
    public static void remove(Path directory) throws IOException {
        FileSystemUtils.deleteRecursively(directory);
    }
}
