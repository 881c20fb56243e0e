package org.vanewright.platform.job;

/**
 * Work of one kind. A feature declares it as a bean and starts it by {@link Jobs#start}.
 *
 * <p>A run may end at any point with its process, and another instance then runs it from the beginning: what it leaves
 * behind must be the same however often it was begun. It runs as nobody: whether somebody may have what it reads is asked
 * before it is started, and the parameters name exact revisions.
 *
 * @param <P> its parameters, a record that is kept as JSON
 */
public interface JobKind<P> {
    /** Short and lasting, such as {@code "flight-log"}; at most 40 characters. */
    String name();

    Class<P> parameters();

    /**
     * Does it, and says now and then how far it has come.
     *
     * @throws JobFailure for what cannot be done, with words for who asked; other exceptions are logged, and told without
     *     words
     */
    JobResult run(P parameters, JobProgress progress);

    /**
     * Told where a job ends otherwise than by its own run: cancelled, or given up. May be told more than once.
     *
     * @param words why, for whoever asked
     */
    default void gaveUp(String jobId, P parameters, String words) {}
}
