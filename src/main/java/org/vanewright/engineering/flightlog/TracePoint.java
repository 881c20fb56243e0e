package org.vanewright.engineering.flightlog;

/**
 * A stretch of a thinned trace. What was not recorded in it is NaN.
 *
 * @param timeS its middle
 * @param leastKt lowest airspeed in it; of the ground speed where no airspeed is recorded
 * @param greatestKt highest one
 * @param altitudeFt mean
 */
public record TracePoint(double timeS, double leastKt, double greatestKt, double altitudeFt) {
    TracePoint with(TracePoint later) {
        return new TracePoint(
                (timeS + later.timeS) / 2,
                least(leastKt, later.leastKt),
                -least(-greatestKt, -later.greatestKt),
                Double.isNaN(altitudeFt)
                        ? later.altitudeFt
                        : Double.isNaN(later.altitudeFt) ? altitudeFt : (altitudeFt + later.altitudeFt) / 2);
    }

    private static double least(double a, double b) {
        return Double.isNaN(a) ? b : Double.isNaN(b) ? a : Math.min(a, b);
    }
}
