package org.vanewright.platform.job;

/** How far a run has come, as it says itself. */
@FunctionalInterface
public interface JobProgress {
    /** Where nobody looks and nobody cancels. */
    JobProgress UNSEEN = (done, of, words) -> {};

    /**
     * Says it, at any rate: it is written a few times in a second at most.
     *
     * @param words what is being done, at most 200 characters
     * @throws JobStopped where the run must not go on, since it was cancelled, or the process ends, or another one took
     *     over; let it pass
     */
    void report(long done, long of, String words);
}
