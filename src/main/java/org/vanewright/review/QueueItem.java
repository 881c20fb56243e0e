package org.vanewright.review;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.Revision;
import org.vanewright.record.check.CheckResult;

/**
 * A submission in the queue.
 *
 * @param kind such as {@code "airframe"}
 * @param plural as in addresses
 * @param label of the kind, as people call it
 * @param revision what was submitted
 * @param claim who looks at it; null for nobody
 * @param checks what the automatic checks found; empty where they have not run
 * @param own whether it is the reader's own work
 */
public record QueueItem(
        String kind,
        String plural,
        String label,
        Revision<?> revision,
        @Nullable Claim claim,
        List<CheckResult> checks,
        boolean own) {
    /** How many checks ended so. */
    public long count(CheckResult.Outcome outcome) {
        return checks.stream().filter(c -> c.outcome() == outcome).count();
    }

    public long passed() {
        return count(CheckResult.Outcome.PASSED);
    }

    public long noticed() {
        return count(CheckResult.Outcome.NOTICED);
    }

    public long failed() {
        return count(CheckResult.Outcome.FAILED);
    }
}
