package org.vanewright.platform.files;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Pattern;

/**
 * Generated files in a directory, which several processes may share. A file gets its name when it is whole, and is
 * believed only where its SHA-256 is right.
 */
final class DiskFiles {
    static final String UNFINISHED = ".part";

    private static final Pattern KEY = Pattern.compile("[0-9a-f]{64}");
    /** So coarse that reading rarely writes. */
    private static final Duration NOTED = Duration.ofMinutes(1);
    /** Each process looks at the whole directory after it has written this part of the limit. */
    private static final int ROUNDS = 16;

    private final Path directory;
    private final long limitBytes;
    private final Clock clock;
    private final Opener opener;
    private final AtomicLong sincePruning = new AtomicLong(Long.MAX_VALUE / 2);

    /** Opens a new file to be written. */
    @FunctionalInterface
    interface Opener {
        OutputStream open(Path path) throws IOException;
    }

    DiskFiles(Path directory, long limitBytes, Clock clock, Opener opener) {
        this.directory = directory;
        this.limitBytes = limitBytes;
        this.clock = clock;
        this.opener = opener;
    }

    /** Nothing where it is not there or not whole; what is not whole is removed. */
    Optional<KeptFile> read(String key) throws IOException {
        Path path = path(key);
        try {
            byte[] stored = Files.readAllBytes(path);
            Optional<KeptFile> file = FileBytes.read(key, stored);
            if (file.isEmpty()) {
                Files.deleteIfExists(path);
            } else {
                noteUse(path);
            }
            return file;
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    private void noteUse(Path path) throws IOException {
        Instant now = clock.instant();
        try {
            if (Files.getLastModifiedTime(path).toInstant().isBefore(now.minus(NOTED))) {
                Files.setLastModifiedTime(path, FileTime.from(now));
            }
        } catch (NoSuchFileException e) {
            // Another process has just removed it; what was read of it is whole.
            return;
        }
    }

    /** @throws IOException where it could not be kept, with nothing left of it */
    void write(String key, KeptFile file) throws IOException {
        byte[] stored = FileBytes.write(key, file);
        if (!mayHold(stored.length)) {
            return;
        }
        Path part = unfinished(key);
        try {
            try (OutputStream out = opener.open(part)) {
                out.write(stored);
            }
            take(key, part);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** Where a file of that key may be written that has no name yet; what is left there by a crash is removed some time. */
    Path unfinished(String key) throws IOException {
        Path path = path(key);
        Files.createDirectories(path.getParent());
        return path.resolveSibling(key + "." + UUID.randomUUID() + UNFINISHED);
    }

    /** Gives its name to what was written whole. */
    Path take(String key, Path part) throws IOException {
        Path path = path(key);
        long bytes = Files.size(part);
        Files.setLastModifiedTime(part, FileTime.from(clock.instant()));
        Files.move(part, path, StandardCopyOption.ATOMIC_MOVE);
        if (sincePruning.addAndGet(bytes) > limitBytes / ROUNDS) {
            sincePruning.set(0);
            new DiskPruning(directory, clock).to(limitBytes - 2 * (limitBytes / ROUNDS));
        }
        return path;
    }

    /** Where a file that was taken lies, if it does. */
    Optional<Path> place(String key) throws IOException {
        Path path = path(key);
        if (!Files.isRegularFile(path)) {
            return Optional.empty();
        }
        noteUse(path);
        return Optional.of(path);
    }

    /** Whether a file of that size would leave room for others. */
    boolean mayHold(long bytes) {
        return bytes <= limitBytes / ROUNDS;
    }

    private Path path(String key) {
        if (!KEY.matcher(key).matches()) {
            throw new IllegalArgumentException("not a key: " + key);
        }
        return directory.resolve(key.substring(0, 2)).resolve(key);
    }
}
