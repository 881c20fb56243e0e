package org.vanewright.engineering.section;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BisectionSolver;

/**
 * Largest thickness and camber of a section, in chords.
 *
 * @param thickness largest distance between the sides
 * @param camber largest distance of the mean line from the chord line, never negative
 */
record SectionExtremes(double thickness, double camber) {
    private static final int STATIONS = 80;

    /** Measured square to the chord line, which must lie along x; the mean line is halfway between the sides. */
    static SectionExtremes squareToChord(SkinSide upper, SkinSide lower) {
        double front = upper.startX();
        double rear = Math.min(upper.endX(), lower.endX());
        double base = upper.atX(front).y();
        double thickness = largest(
                front,
                rear,
                x -> upper.curveAtX(x).y() - lower.curveAtX(x).y(),
                x -> slope(upper.curveAtX(x)) - slope(lower.curveAtX(x)));
        DoubleUnaryOperator mean =
                x -> 0.5 * (upper.curveAtX(x).y() + lower.curveAtX(x).y()) - base;
        DoubleUnaryOperator meanSlope = x -> slope(upper.curveAtX(x)) + slope(lower.curveAtX(x));
        double up = largest(front, rear, mean, meanSlope);
        double down = largest(front, rear, x -> -mean.applyAsDouble(x), meanSlope);
        return new SectionExtremes(thickness, Math.max(0, Math.max(up, down)));
    }

    /** Greatest value between the ends: the best of cosine-spaced stations, then the root of the slope beside it. */
    static double largest(double from, double to, DoubleUnaryOperator value, DoubleUnaryOperator slope) {
        int best = 1;
        double bestValue = Double.NEGATIVE_INFINITY;
        for (int i = 1; i < STATIONS; i++) {
            double v = value.applyAsDouble(station(from, to, i));
            if (v > bestValue) {
                bestValue = v;
                best = i;
            }
        }
        double low = station(from, to, Math.max(1, best - 1));
        double high = station(from, to, Math.min(STATIONS - 1, best + 1));
        if (!(slope.applyAsDouble(low) * slope.applyAsDouble(high) < 0)) {
            return bestValue;
        }
        // bisection, because the slope of an odd outline can jump; a greatest value needs its place to half the digits
        double top = new BisectionSolver(1e-10 * (to - from)).solve(100, slope::applyAsDouble, low, high);
        return Math.max(bestValue, value.applyAsDouble(top));
    }

    private static double station(double from, double to, int index) {
        return from + (to - from) * 0.5 * (1 - Math.cos(Math.PI * index / STATIONS));
    }

    private static double slope(CurvePoint p) {
        return p.dy() / p.dx();
    }
}
