package org.vanewright.engineering.flow;

import java.util.function.DoubleUnaryOperator;

/** A smooth function at even places and cubics between them, for one that is asked often and dear to compute. */
final class EvenCurve {
    private final double from;
    private final double perStep;
    private final double to;
    private final DoubleUnaryOperator exact;
    /** Value and slope times the step, by turns. */
    private final double[] knots;

    /**
     * @param steps pieces between the ends; beyond those the function itself is asked
     * @param slope its derivative
     */
    EvenCurve(double from, double to, int steps, DoubleUnaryOperator exact, DoubleUnaryOperator slope) {
        this.from = from;
        this.to = to;
        this.exact = exact;
        perStep = steps / (to - from);
        knots = new double[2 * steps + 2];
        for (int i = 0; i <= steps; i++) {
            double at = from + i / perStep;
            knots[2 * i] = exact.applyAsDouble(at);
            knots[2 * i + 1] = slope.applyAsDouble(at) / perStep;
        }
    }

    double at(double place) {
        if (!(place >= from && place < to)) {
            return exact.applyAsDouble(place);
        }
        double along = (place - from) * perStep;
        int i = (int) along;
        double t = along - i;
        double r = 1 - t;
        double value = knots[2 * i];
        return value
                + t * t * (3 - 2 * t) * (knots[2 * i + 2] - value)
                + t * r * (r * knots[2 * i + 1] - t * knots[2 * i + 3]);
    }
}
