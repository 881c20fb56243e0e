package org.vanewright.engineering.flow;

import org.jspecify.annotations.Nullable;

/** Evenly spaced angles one after the other, each started from what the two before it lead to. */
final class Sweep {
    private final Coupling coupling;
    private double @Nullable [] last;
    private double @Nullable [] beforeLast;

    Sweep(Coupling coupling) {
        this.coupling = coupling;
    }

    CoupledFlow next(double angleRad) {
        CoupledFlow found = coupling.atAngle(angleRad, start());
        beforeLast = last;
        last = found.onward();
        return found;
    }

    private double @Nullable [] start() {
        if (last == null || beforeLast == null) {
            return last;
        }
        double[] start = new double[last.length];
        for (int i = 0; i < start.length; i++) {
            start[i] = 2 * last[i] - beforeLast[i];
        }
        return start;
    }
}
