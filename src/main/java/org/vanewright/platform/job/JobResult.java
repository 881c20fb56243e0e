package org.vanewright.platform.job;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * What came of a job.
 *
 * @param link where it stands, a path of this service
 * @param file a file made by it, which is kept as long as the job
 */
public record JobResult(@Nullable String link, @Nullable JobFile file) {
    /**
     * A file to be kept.
     *
     * @param content is read once, if at all, and then closed
     */
    public record JobFile(String name, String type, long sizeBytes, InputStream content) {}

    public static JobResult at(String link) {
        return new JobResult(link, null);
    }

    public static JobResult file(String name, String type, byte[] bytes) {
        return new JobResult(null, new JobFile(name, type, bytes.length, new ByteArrayInputStream(bytes)));
    }

    /** A file too large for memory; the one at the path is gone when it has been kept, or is not wanted. */
    public static JobResult file(String name, String type, Path path) throws IOException {
        long size = Files.size(path);
        return new JobResult(
                null, new JobFile(name, type, size, Files.newInputStream(path, StandardOpenOption.DELETE_ON_CLOSE)));
    }
}
