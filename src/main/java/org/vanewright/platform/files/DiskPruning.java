package org.vanewright.platform.files;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;

/** Removes what was used least lately, and what a crash left unfinished. Other files in the directory are left alone. */
final class DiskPruning {
    /** Whoever still writes to it has written nothing for so long. */
    private static final Duration ABANDONED = Duration.ofMinutes(10);

    private static final Pattern WHOLE = Pattern.compile("[0-9a-f]{64}");
    private static final Pattern PART = Pattern.compile("[0-9a-f]{64}\\.[0-9a-f-]{36}\\.part");

    private final Path directory;
    private final Instant abandoned;

    private record Found(Path path, long bytes, Instant used) {}

    DiskPruning(Path directory, Clock clock) {
        this.directory = directory;
        this.abandoned = clock.instant().minus(ABANDONED);
    }

    /** Leaves at most so many bytes. */
    void to(long bytes) throws IOException {
        List<Found> whole = find();
        long held = whole.stream().mapToLong(Found::bytes).sum();
        whole.sort(Comparator.comparing(Found::used));
        for (Found oldest : whole) {
            if (held <= bytes) {
                return;
            }
            Files.deleteIfExists(oldest.path());
            held -= oldest.bytes();
        }
    }

    private List<Found> find() throws IOException {
        List<Found> whole = new ArrayList<>();
        Files.walkFileTree(directory, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                String name = String.valueOf(file.getFileName());
                Instant used = attributes.lastModifiedTime().toInstant();
                if (WHOLE.matcher(name).matches()) {
                    whole.add(new Found(file, attributes.size(), used));
                } else if (PART.matcher(name).matches() && used.isBefore(abandoned)) {
                    Files.deleteIfExists(file);
                }
                return FileVisitResult.CONTINUE;
            }

            /** Another process may have removed it meanwhile. */
            @Override
            public FileVisitResult visitFileFailed(Path file, IOException e) {
                return FileVisitResult.CONTINUE;
            }
        });
        return whole;
    }
}
