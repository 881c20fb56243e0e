package org.vanewright.engineering.section;

import java.util.Arrays;
import java.util.Locale;

/** One side of a section: answers questions by x and by arc length over a parametric curve. */
final class SkinSide {
    /** Rounding a caller may bring along at either end of a range, in chords. */
    private static final double SLACK = 1e-9;
    /** An x this close to the leading edge's is the leading edge: rounding there would move the place by its root. */
    private static final double AT_LEADING_EDGE = 1e-12;

    private final SkinCurve curve;
    private final ArcLengthTable table;
    private final SurfaceSide side;
    private final double startX;
    private final double endX;
    /** Least x from each table node to the trailing edge: never falls, so that the rearmost crossing can be searched. */
    private final double[] leastXBehind;

    SkinSide(SurfaceSide side, SkinCurve curve) {
        this.side = side;
        this.curve = curve;
        this.table = new ArcLengthTable(curve);
        int n = table.nodeCount();
        leastXBehind = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double x = curve.at(table.node(i)).x();
            leastXBehind[i] = i == n - 1 ? x : Math.min(x, leastXBehind[i + 1]);
        }
        startX = curve.at(table.node(0)).x();
        endX = curve.at(table.node(n - 1)).x();
    }

    SkinCurve curve() {
        return curve;
    }

    double length() {
        return table.length();
    }

    double startX() {
        return startX;
    }

    double endX() {
        return endX;
    }

    SkinPoint atArcLength(double arc) {
        double within = clamp(arc, 0, table.length(), "arc length");
        return pointAt(table.parameterAt(within), within);
    }

    /** An exact place with its arc length, about as far along as asked; spares the root finding. */
    SkinPoint nearArcLength(double arc) {
        double within = clamp(arc, 0, table.length(), "arc length");
        double parameter = table.parameterNear(within);
        return pointAt(parameter, table.arcAt(parameter));
    }

    SkinPoint atX(double x) {
        double within = clamp(x, startX, endX, "x");
        double parameter = parameterAtX(within);
        return pointAt(parameter, table.arcAt(parameter));
    }

    /** The curve at an x strictly between leading and trailing edge; spares the arc length. */
    CurvePoint curveAtX(double x) {
        return curve.at(parameterAtX(x));
    }

    /** The rearmost place with this x; the leading edge itself at its own x. */
    private double parameterAtX(double x) {
        int last = table.nodeCount() - 1;
        if (x <= startX + AT_LEADING_EDGE) {
            return table.node(0);
        }
        if (x == endX) {
            return table.node(last);
        }
        int found = Arrays.binarySearch(leastXBehind, x);
        int panel = found >= 0 ? found : -found - 2;
        while (panel < last && leastXBehind[panel + 1] <= x) {
            panel++;
        }
        if (panel >= last) {
            return table.node(last);
        }
        double low = table.node(panel);
        double high = table.node(panel + 1);
        if (curve.at(low).x() >= x) {
            return low;
        }
        return ArcLengthTable.solver()
                .solve(ArcLengthTable.MAX_EVALUATIONS, u -> curve.at(u).x() - x, low, high);
    }

    private SkinPoint pointAt(double parameter, double arc) {
        CurvePoint p = curve.at(parameter);
        double speed = p.speed();
        // the upper side turns clockwise where it is convex outward, the lower side anticlockwise
        double convex = side == SurfaceSide.UPPER ? -p.curvature() : p.curvature();
        return new SkinPoint(p.x(), p.y(), arc, p.dx() / speed, p.dy() / speed, convex);
    }

    private double clamp(double value, double low, double high, String what) {
        if (!(value >= low - SLACK && value <= high + SLACK)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s %s on the %s side is not within %s to %s",
                    what,
                    value,
                    side.name().toLowerCase(Locale.ROOT),
                    low,
                    high));
        }
        return Math.max(low, Math.min(high, value));
    }
}
