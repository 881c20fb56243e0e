package org.vanewright.engineering.flow;

import java.util.List;
import java.util.concurrent.ForkJoinTask;
import java.util.stream.DoubleStream;

/**
 * The angles of a polar, solved from the middle outward: the two in the middle beside each other, then those below them
 * beside those above, each from what its two neighbours lead to. Halves may run on two threads of the machine's common
 * pool; which thread runs what makes no difference to the result.
 */
final class PolarSweep {
    /** Passes at no angle beside those that one more radian takes, about. */
    private static final double PLAIN_WORK = Math.toRadians(20);

    private final Coupling coupling;
    private final double[] anglesRad;
    private final PolarPoint[] points;

    private PolarSweep(Coupling coupling, double[] anglesRad) {
        this.coupling = coupling;
        this.anglesRad = anglesRad;
        points = new PolarPoint[anglesRad.length];
    }

    /** @param anglesRad evenly spaced, at least two */
    static List<PolarPoint> of(Coupling coupling, double[] anglesRad) {
        PolarSweep sweep = new PolarSweep(coupling, anglesRad);
        sweep.run();
        return List.of(sweep.points);
    }

    private void run() {
        int middle = middle(anglesRad);
        ForkJoinTask<CoupledFlow> aside =
                ForkJoinTask.adapt(() -> first(middle)).fork();
        CoupledFlow upper = first(middle + 1);
        CoupledFlow lower = aside.join();
        ForkJoinTask<?> below = ForkJoinTask.adapt(() -> goOn(new Sweep(coupling, upper, lower), middle, -1))
                .fork();
        goOn(new Sweep(coupling, lower, upper), middle + 1, 1);
        below.join();
    }

    /** Last of the lower half; the halves are about as much work, for the steeper an angle the more passes it takes. */
    private static int middle(double[] anglesRad) {
        double whole = DoubleStream.of(anglesRad).map(PolarSweep::work).sum();
        double done = 0;
        int at = 0;
        while (at < anglesRad.length - 2 && done + work(anglesRad[at]) < whole / 2) {
            done += work(anglesRad[at]);
            at++;
        }
        return at;
    }

    private static double work(double angleRad) {
        return PLAIN_WORK + Math.abs(angleRad);
    }

    private CoupledFlow first(int at) {
        CoupledFlow found = coupling.atAngle(anglesRad[at], null);
        points[at] = PolarPoint.of(found);
        return found;
    }

    private void goOn(Sweep sweep, int from, int step) {
        for (int i = from + step; i >= 0 && i < points.length; i += step) {
            points[i] = PolarPoint.of(sweep.next(anglesRad[i]));
        }
    }
}
