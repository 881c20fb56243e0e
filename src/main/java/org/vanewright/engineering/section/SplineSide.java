package org.vanewright.engineering.section;

/**
 * One side of a splined outline, from the leading edge on.
 *
 * @param loop the whole outline, trailing edge → upper → leading edge → lower → trailing edge
 * @param leadingEdge its parameter at the leading edge
 */
record SplineSide(LoopSpline loop, double leadingEdge, SurfaceSide side) implements SkinCurve {
    @Override
    public double[] breaks() {
        boolean upper = side == SurfaceSide.UPPER;
        double[] inner = upper ? loop.knotsBetween(0, leadingEdge) : loop.knotsBetween(leadingEdge, loop.end());
        double[] breaks = new double[inner.length + 2];
        breaks[breaks.length - 1] = upper ? leadingEdge : loop.end() - leadingEdge;
        for (int i = 0; i < inner.length; i++) {
            breaks[i + 1] = upper ? leadingEdge - inner[inner.length - 1 - i] : inner[i] - leadingEdge;
        }
        return breaks;
    }

    @Override
    public CurvePoint at(double parameter) {
        if (side == SurfaceSide.LOWER) {
            return loop.at(leadingEdge + parameter);
        }
        CurvePoint p = loop.at(leadingEdge - parameter);
        return new CurvePoint(p.x(), p.y(), -p.dx(), -p.dy(), p.ddx(), p.ddy());
    }

    @Override
    public double speed(double parameter) {
        return loop.speed(side == SurfaceSide.LOWER ? leadingEdge + parameter : leadingEdge - parameter);
    }
}
