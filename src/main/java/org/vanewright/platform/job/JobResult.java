package org.vanewright.platform.job;

import org.jspecify.annotations.Nullable;

/**
 * What came of a job.
 *
 * @param link where it stands, a path of this service
 * @param file a file made by it, which is kept as long as the job
 */
public record JobResult(@Nullable String link, @Nullable JobFile file) {
    /** A file as it is kept. */
    public record JobFile(String name, String type, byte[] bytes) {}

    public static JobResult at(String link) {
        return new JobResult(link, null);
    }

    public static JobResult file(String name, String type, byte[] bytes) {
        return new JobResult(null, new JobFile(name, type, bytes));
    }
}
