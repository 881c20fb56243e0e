package org.vanewright.account;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;

/** Several who try the same thing in the same moment. */
final class AtOnce {
    private AtOnce() {}

    /** How many of them succeed. */
    static int successes(int many, BooleanSupplier attempt) throws Exception {
        CyclicBarrier start = new CyclicBarrier(many);
        ExecutorService threads = Executors.newFixedThreadPool(many);
        try {
            List<Future<Boolean>> all = new ArrayList<>();
            for (int i = 0; i < many; i++) {
                all.add(threads.submit(() -> {
                    start.await();
                    return attempt.getAsBoolean();
                }));
            }
            int successes = 0;
            for (Future<Boolean> one : all) {
                successes += one.get() ? 1 : 0;
            }
            return successes;
        } finally {
            threads.shutdownNow();
        }
    }
}
