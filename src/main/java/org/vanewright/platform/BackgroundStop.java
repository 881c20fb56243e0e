package org.vanewright.platform;

import java.time.Duration;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Ends work in the background when the service stops. */
public final class BackgroundStop {
    private static final Logger LOG = LoggerFactory.getLogger(BackgroundStop.class);
    private static final Duration LONGEST_WAIT = Duration.ofSeconds(10);

    private BackgroundStop() {}

    /**
     * Takes nothing new, and waits a while for what is under way: without interrupting, which would close the file of a
     * database beneath it. The database is closed next, and one in a file that is closed amid a transaction may not take all
     * of it back.
     *
     * @param what is done there, for the log
     */
    public static void of(ExecutorService executor, String what) {
        executor.shutdown();
        try {
            if (!executor.awaitTermination(LONGEST_WAIT.toSeconds(), TimeUnit.SECONDS)) {
                LOG.warn("{} goes on while the service stops", what);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
