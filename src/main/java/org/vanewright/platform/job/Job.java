package org.vanewright.platform.job;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Long work that somebody asked for.
 *
 * @param kind of the {@link JobKind} that does it
 * @param title what it is, for whoever asked
 * @param parameters JSON
 * @param ownerId of the person who asked; null where the service did
 * @param attempts how often it was begun; more than once where a process ended in the middle
 * @param done steps of {@code of}; 0 of 0 while nobody knows
 * @param words what is being done
 * @param link where what came of it stands, a path of this service
 * @param file what came of it
 * @param problem why it could not be done
 */
public record Job(
        String id,
        String kind,
        String title,
        String parameters,
        @Nullable String ownerId,
        JobState state,
        int attempts,
        long done,
        long of,
        @Nullable String words,
        @Nullable String link,
        @Nullable FileHead file,
        @Nullable String problem,
        Instant createdAt,
        @Nullable Instant finishedAt) {

    /** A file that came of a job, without its content. */
    public record FileHead(String name, String type, long sizeBytes) {}

    /** Of the whole; 100 only when it is done. */
    public int percent() {
        return state == JobState.DONE ? 100 : of <= 0 ? 0 : (int) Math.min(99, 100 * done / of);
    }
}
