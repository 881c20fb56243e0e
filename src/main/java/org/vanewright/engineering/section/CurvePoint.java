package org.vanewright.engineering.section;

/**
 * Position and derivatives of a curve at one parameter value, lengths in chords.
 *
 * @param x chordwise position
 * @param y height
 * @param dx first derivative of x by the parameter
 * @param dy first derivative of y
 * @param ddx second derivative of x
 * @param ddy second derivative of y
 */
record CurvePoint(double x, double y, double dx, double dy, double ddx, double ddy) {
    double speed() {
        // Without hypot's care for numbers that are too large to square, which these are not, a tenth of the work.
        return Math.sqrt(dx * dx + dy * dy);
    }

    /** Signed curvature, positive where the curve turns anticlockwise. */
    double curvature() {
        double v = speed();
        return (dx * ddy - dy * ddx) / (v * v * v);
    }
}
