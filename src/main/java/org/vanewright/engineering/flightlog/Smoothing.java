package org.vanewright.engineering.flightlog;

import java.util.ArrayDeque;
import java.util.Deque;

/** Means of the last few samples. */
final class Smoothing {
    private final int most;
    private final Deque<FlightSample> last = new ArrayDeque<>();

    Smoothing(int most) {
        this.most = most;
    }

    FlightSample add(FlightSample sample) {
        last.addLast(sample);
        if (last.size() > most) {
            last.removeFirst();
        }
        return new Means(last).at(sample.timeS());
    }

    void clear() {
        last.clear();
    }
}
