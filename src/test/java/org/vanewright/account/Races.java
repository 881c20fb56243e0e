package org.vanewright.account;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Lets several do the same at once. */
final class Races {
    private Races() {}

    static <T> List<T> run(int racers, IntFunction<T> work) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(racers);
        try {
            CyclicBarrier start = new CyclicBarrier(racers);
            List<Callable<T>> tasks = IntStream.range(0, racers)
                    .mapToObj(i -> (Callable<T>) () -> {
                        start.await();
                        return work.apply(i);
                    })
                    .toList();
            List<T> results = new ArrayList<>();
            for (Future<T> result : threads.invokeAll(tasks)) {
                results.add(result.get());
            }
            return results;
        } finally {
            threads.shutdownNow();
        }
    }
}
