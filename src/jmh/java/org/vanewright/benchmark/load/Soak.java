package org.vanewright.benchmark.load;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicBoolean;
import org.hipparchus.stat.regression.SimpleRegression;

/** The mixture for many minutes, with the memory that is in use every half minute and the line through those figures. */
final class Soak {
    private static final Duration STEP = Duration.ofSeconds(30);
    /** Caches fill up meanwhile. */
    private static final double SETTLED_AFTER = 0.2;

    private Soak() {}

    static void run(
            ServiceUnderLoad service, Scenarios scenarios, Writers writers, Settings settings, Recorder recorder) {
        AtomicBoolean done = new AtomicBoolean();
        SimpleRegression heap = new SimpleRegression();
        SimpleRegression resident = new SimpleRegression();
        Thread watch = new Thread(() -> watch(service, settings.soak(), done, heap, resident, recorder));
        watch.start();
        new Load(service, settings.clients(), recorder)
                .run(scenarios.mixture(writers), Duration.ofSeconds(1), settings.soak());
        done.set(true);
        try {
            watch.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        System.out.printf(
                Locale.ROOT,
                "%nslope over the last %.0f %%: heap after collection %+.2f ± %.2f MB a minute, resident %+.2f ± %.2f MB a minute%n",
                100 * (1 - SETTLED_AFTER),
                heap.getSlope(),
                2 * heap.getSlopeStdErr(),
                resident.getSlope(),
                2 * resident.getSlopeStdErr());
    }

    private static void watch(
            ServiceUnderLoad service,
            Duration soak,
            AtomicBoolean done,
            SimpleRegression heap,
            SimpleRegression resident,
            Recorder recorder) {
        System.out.println(
                "\n| minute | heap after collection, MB | resident, MB | answers |\n| --- | --- | --- | --- |");
        Instant begun = Instant.now();
        Instant next = begun;
        while (!done.get()) {
            if (Instant.now().isBefore(next)) {
                ServiceUnderLoad.pause(Duration.ofMillis(200));
                continue;
            }
            next = next.plus(STEP);
            double minute = Duration.between(begun, Instant.now()).toMillis() / 60_000.0;
            double heapMb = service.heapKb() / 1024.0;
            double residentMb = service.residentKb() / 1024.0;
            long answers = recorder.all().values().stream()
                    .mapToLong(n -> n.micros.getTotalCount())
                    .sum();
            System.out.printf(Locale.ROOT, "| %.1f | %.1f | %.1f | %d |%n", minute, heapMb, residentMb, answers);
            if (minute * 60 >= soak.toSeconds() * SETTLED_AFTER) {
                heap.addData(minute, heapMb);
                resident.addData(minute, residentMb);
            }
        }
    }
}
