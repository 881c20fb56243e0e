package org.vanewright.engineering.flow;

/**
 * Profile drag from the layers at the trailing edge: c_d = 2 θ (U/V)^((H + 5)/2), summed over both sides. Source: H. B.
 * Squire, A. D. Young, "The calculation of the profile drag of aerofoils", ARC R&amp;M 1838 (1938).
 */
final class SquireYoung {
    private SquireYoung() {}

    /** One side's part, per unit length. */
    static double drag(double momentumThickness, double speedRatio, double shapeFactor) {
        return 2 * momentumThickness * Math.pow(speedRatio, 0.5 * (shapeFactor + 5));
    }
}
