package org.vanewright.benchmark.load;

import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import org.HdrHistogram.ConcurrentHistogram;
import org.HdrHistogram.Histogram;

/** Notes how long answers took, by label, while it is told to. */
final class Recorder {
    private static final long LONGEST_MICROS = 60_000_000;
    private static final int DIGITS = 3;

    private final Map<String, Noted> noted = new ConcurrentHashMap<>();
    private volatile boolean on;

    /** Of one label. */
    static final class Noted {
        final Histogram micros = new ConcurrentHistogram(LONGEST_MICROS, DIGITS);
        final AtomicLong bytes = new AtomicLong();
        final AtomicLong failures = new AtomicLong();
        final AtomicLong measuredNanos = new AtomicLong();

        double millis(double percentile) {
            return micros.getValueAtPercentile(percentile) / 1000.0;
        }
    }

    void measure(boolean now) {
        on = now;
    }

    void note(String label, long nanos, int bytes) {
        if (on) {
            Noted each = of(label);
            each.micros.recordValue(Math.min(LONGEST_MICROS, nanos / 1000));
            each.bytes.addAndGet(bytes);
        }
    }

    void failed(String label, String what) {
        if (of(label).failures.getAndIncrement() == 0) {
            System.err.println("FAILED: " + label + ": " + what.substring(0, Math.min(2000, what.length())));
        }
    }

    Noted of(String label) {
        return noted.computeIfAbsent(label, l -> new Noted());
    }

    Map<String, Noted> all() {
        return new TreeMap<>(noted);
    }
}
