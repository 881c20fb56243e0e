package org.vanewright.platform.files;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.Timer;
import java.util.function.Supplier;

/** What the cache of generated files is measured by. */
final class FileMeters {
    private final Counter memoryHits;
    private final Counter diskHits;
    private final Counter misses;
    private final Counter diskFailures;
    private final Timer made;
    private final Timer failed;

    FileMeters(MeterRegistry meters) {
        memoryHits = hits(meters, "memory");
        diskHits = hits(meters, "disk");
        misses = Counter.builder("vanewright.files.misses")
                .description("Generated files asked for that were kept nowhere")
                .register(meters);
        diskFailures = Counter.builder("vanewright.files.disk.failures")
                .description("Reads and writes of kept files on disk that failed")
                .register(meters);
        made = renders(meters, "made");
        failed = renders(meters, "failed");
    }

    private static Counter hits(MeterRegistry meters, String tier) {
        return Counter.builder("vanewright.files.hits")
                .description("Generated files that were sent as they were kept")
                .tag("tier", tier)
                .register(meters);
    }

    private static Timer renders(MeterRegistry meters, String outcome) {
        return Timer.builder("vanewright.files.renders")
                .description("Files generated, and how long that took")
                .tag("outcome", outcome)
                .register(meters);
    }

    void memoryHit() {
        memoryHits.increment();
    }

    void diskHit() {
        diskHits.increment();
    }

    void miss() {
        misses.increment();
    }

    void diskFailure() {
        diskFailures.increment();
    }

    <T> T render(Supplier<T> work) {
        return timed(work::get);
    }

    /** Work that may fail by its exception. */
    @FunctionalInterface
    interface Work<T, E extends Exception> {
        T run() throws E;
    }

    <T, E extends Exception> T timed(Work<T, E> work) throws E {
        Timer.Sample sample = Timer.start();
        boolean done = false;
        try {
            T result = work.run();
            done = true;
            return result;
        } finally {
            sample.stop(done ? made : failed);
        }
    }
}
