package org.vanewright.engineering.unroll;

import java.util.OptionalDouble;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.jspecify.annotations.Nullable;

/** Where the row line crosses each ruling. A row of constant chord fraction is a ruling itself and crosses none. */
final class RowCrossing {
    private static final int STATIONS = 33;

    /** Shorter crossings, in u, are as good as along one ruling: no length square to it comes into play. */
    private static final double SHORTEST = 1e-9;

    static final RowCrossing NONE = new RowCrossing(0, 0, null);

    private final double from;
    private final double to;
    private final @Nullable PolynomialSplineFunction spanFraction;

    private RowCrossing(double from, double to, @Nullable PolynomialSplineFunction spanFraction) {
        this.from = from;
        this.to = to;
        this.spanFraction = spanFraction;
    }

    static RowCrossing of(RowLine line, Rulings rulings, LocalArc arc) {
        double from = end(line, arc, 0);
        double to = end(line, arc, 1);
        double[] t = new double[STATIONS];
        double[] u = new double[STATIONS];
        for (int i = 0; i < STATIONS; i++) {
            t[i] = from + (to - from) * i / (STATIONS - 1);
            u[i] = line.measure() == RowLine.Measure.ARC_MM
                    ? arc.parameter(t[i], line.at(t[i]))
                    : Math.max(rulings.parameter(line.at(t[i])), 0);
        }
        boolean rearward = u[STATIONS - 1] > u[0];
        if (!rearward) {
            reverse(t);
            reverse(u);
        }
        for (int i = 1; i < STATIONS; i++) {
            if (u[i] - u[i - 1] < SHORTEST) {
                return NONE;
            }
        }
        return new RowCrossing(u[0], u[STATIONS - 1], new SplineInterpolator().interpolate(u, t));
    }

    /** How near the row comes to an end of the panel before it would run off the skin at the trailing edge. */
    private static double end(RowLine line, LocalArc arc, int end) {
        if (line.measure() != RowLine.Measure.ARC_MM || onSkin(line, arc, end)) {
            return end;
        }
        double off = end;
        double on = 1 - end;
        while (Math.abs(off - on) > SHORTEST) {
            double middle = (off + on) / 2;
            if (onSkin(line, arc, middle)) {
                on = middle;
            } else {
                off = middle;
            }
        }
        return on;
    }

    private static boolean onSkin(RowLine line, LocalArc arc, double spanFraction) {
        return line.at(spanFraction) <= arc.lengthMm(spanFraction);
    }

    private static void reverse(double[] values) {
        for (int i = 0; i < values.length / 2; i++) {
            double swap = values[i];
            values[i] = values[values.length - 1 - i];
            values[values.length - 1 - i] = swap;
        }
    }

    /** Span fraction of the crossing with a ruling, if there is one. */
    OptionalDouble at(double u) {
        if (spanFraction == null || u < from || u > to) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Math.min(Math.max(spanFraction.value(u), 0), 1));
    }

    /** The rulings at the ends of the row, where the development has a kink. */
    double[] edges() {
        return spanFraction == null ? new double[0] : new double[] {from, to};
    }
}
