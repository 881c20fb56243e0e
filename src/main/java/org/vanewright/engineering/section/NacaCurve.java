package org.vanewright.engineering.section;

/**
 * One side of a NACA section over t = √(x of the mean line): half the thickness laid off square to the mean line.
 *
 * <p>x = t² ∓ y_t sin θ, y = y_c ± y_t cos θ, θ the mean line's slope angle; upper sign for the upper side. Source: E. N.
 * Jacobs, K. E. Ward, R. M. Pinkerton, NACA TR-460 (1933).
 */
record NacaCurve(MeanLine meanLine, ThicknessForm thickness, SurfaceSide side) implements SkinCurve {
    @Override
    public double[] breaks() {
        double joint = meanLine.joint();
        return joint > 0 ? new double[] {0, Math.sqrt(joint), 1} : new double[] {0, 1};
    }

    @Override
    public CurvePoint at(double t) {
        double x = t * t;
        double sign = side == SurfaceSide.UPPER ? 1 : -1;
        double h = sign * thickness.half(t);
        double dh = sign * thickness.slope(t);
        double ddh = sign * thickness.bend(t);
        double g = meanLine.slope(x);
        double bend = meanLine.bend(x);
        double w = 1 + g * g;
        double cos = 1 / Math.sqrt(w);
        double sin = g * cos;
        double angleByX = bend / w;
        double angleByXX = meanLine.bendRate(x) / w - 2 * g * angleByX * angleByX;
        double da = 2 * t * angleByX;
        double dda = 4 * x * angleByXX + 2 * angleByX;
        return new CurvePoint(
                x - h * sin,
                meanLine.height(x) + h * cos,
                2 * t - dh * sin - h * cos * da,
                2 * t * g + dh * cos - h * sin * da,
                2 - ddh * sin - 2 * dh * cos * da - h * (cos * dda - sin * da * da),
                4 * x * bend + 2 * g + ddh * cos - 2 * dh * sin * da - h * (sin * dda + cos * da * da));
    }

    @Override
    public double speed(double t) {
        double x = t * t;
        double sign = side == SurfaceSide.UPPER ? 1 : -1;
        double g = meanLine.slope(x);
        double w = 1 + g * g;
        double da = 2 * t * meanLine.bend(x) / w;
        double along = 2 * t * Math.sqrt(w) - sign * thickness.half(t) * da;
        double across = thickness.slope(t);
        // See CurvePoint.speed.
        return Math.sqrt(along * along + across * across);
    }

    /** True when the half-thickness stays below the mean line's radius of bend, so that the skin does not fold. */
    boolean regular() {
        for (int i = 1; i <= 400; i++) {
            double t = i / 400.0;
            double g = meanLine.slope(t * t);
            double w = 1 + g * g;
            if (thickness.half(t) * Math.abs(meanLine.bend(t * t)) >= 0.99 * w * Math.sqrt(w)) {
                return false;
            }
        }
        return true;
    }
}
