package org.vanewright.benchmark.load;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;

/** A closed loop: each client asks again as soon as it has its answer. */
final class Load {
    private final List<Visitor> visitors = new ArrayList<>();
    private final ServiceUnderLoad service;
    private final Recorder recorder;

    Load(ServiceUnderLoad service, int clients, Recorder recorder) {
        this.service = service;
        this.recorder = recorder;
        String origin = service.origin();
        for (int i = 0; i < clients; i++) {
            visitors.add(new Visitor(origin, 1000 + i, recorder));
        }
    }

    /**
     * Runs it, measuring after the warm-up.
     *
     * @return milliseconds of processor time that the service took while it was measured
     */
    long run(Scenarios.Scenario scenario, Duration warmUp, Duration measured) {
        AtomicBoolean done = new AtomicBoolean();
        List<Thread> threads = new ArrayList<>();
        for (Visitor visitor : visitors) {
            Thread thread = new Thread(() -> {
                while (!done.get()) {
                    scenario.once(visitor);
                }
            });
            threads.add(thread);
            thread.start();
        }
        ServiceUnderLoad.pause(warmUp);
        long before = service.processorMillis();
        recorder.measure(true);
        ServiceUnderLoad.pause(measured);
        recorder.measure(false);
        long took = service.processorMillis() - before;
        done.set(true);
        threads.forEach(Load::join);
        return took;
    }

    private static void join(Thread thread) {
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
