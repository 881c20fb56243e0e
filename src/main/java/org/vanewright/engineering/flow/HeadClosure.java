package org.vanewright.engineering.flow;

/**
 * Closures of Head's entrainment method: M. R. Head, "Entrainment in the turbulent boundary layer", ARC R&amp;M 3152 (1958),
 * in the fits of T. Cebeci, P. Bradshaw, "Momentum Transfer in Boundary Layers" (1977), section 7.2; friction by H.
 * Ludwieg, W. Tillmann, "Investigations of the wall shearing stress in turbulent boundary layers", NACA TM 1285 (1950).
 *
 * <p>Range: H from 1.2 to 2.4, the friction law 500 &lt; Re_θ &lt; 50 000.
 */
final class HeadClosure {
    /** Turbulent separation is taken where H reaches this; Cebeci and Bradshaw give 1.8 to 2.4. */
    static final double SEPARATION = 2.4;

    private static final double JOINT = 1.6;
    private static final double LEAST_EXCESS = 0.05;
    private static final double JOINT_ABOVE = attachedSide(JOINT);
    private static final double JOINT_BELOW = separatingSide(JOINT);
    private static final double LN_10 = Math.log(10);

    /** Both fits of H by H₁ and the entrainment, where layers are: to some 1e-9 of themselves. */
    private static final double LEAST_TABULATED = 3.5;

    private static final double MOST_TABULATED = 15;
    private static final EvenCurve ATTACHED = new EvenCurve(
            JOINT_ABOVE,
            MOST_TABULATED,
            600,
            HeadClosure::shapeAttached,
            h1 -> shapeByEntrainmentAttached(shapeAttached(h1)));
    private static final EvenCurve SEPARATING = new EvenCurve(
            LEAST_TABULATED,
            JOINT_BELOW,
            600,
            HeadClosure::shapeSeparating,
            h1 -> shapeByEntrainmentSeparating(shapeSeparating(h1)));
    private static final EvenCurve DRAWN = new EvenCurve(
            LEAST_TABULATED, MOST_TABULATED, 1200, HeadClosure::drawn, h1 -> -0.6169 * drawn(h1) / (h1 - 3));

    private HeadClosure() {}

    /** H₁ = (δ − δ*)/θ by shape factor. The two fits leave a step of 0.4 % at H = 1.6. */
    static double entrainmentShape(double shape) {
        return shape <= JOINT ? attachedSide(shape) : separatingSide(shape);
    }

    private static double attachedSide(double shape) {
        return 3.3 + 0.8234 * Math.pow(shape - 1.1, -1.287);
    }

    private static double separatingSide(double shape) {
        return 3.3 + 1.5501 * Math.pow(shape - 0.6778, -3.064);
    }

    /** Shape factor by H₁; between the two fits it is 1.6. */
    static double shapeFactor(double entrainmentShape) {
        if (entrainmentShape >= JOINT_ABOVE) {
            return ATTACHED.at(entrainmentShape);
        }
        return entrainmentShape > JOINT_BELOW ? JOINT : SEPARATING.at(entrainmentShape);
    }

    private static double shapeAttached(double entrainmentShape) {
        return 1.1 + Math.pow((entrainmentShape - 3.3) / 0.8234, -1 / 1.287);
    }

    private static double shapeSeparating(double entrainmentShape) {
        return 0.6778 + Math.pow(Math.max(LEAST_EXCESS, entrainmentShape - 3.3) / 1.5501, -1 / 3.064);
    }

    /** dH/dH₁, below 0. */
    static double shapeByEntrainment(double shape) {
        return shape <= JOINT ? shapeByEntrainmentAttached(shape) : shapeByEntrainmentSeparating(shape);
    }

    private static double shapeByEntrainmentAttached(double shape) {
        return -Math.pow(shape - 1.1, 2.287) / (0.8234 * 1.287);
    }

    private static double shapeByEntrainmentSeparating(double shape) {
        return -Math.pow(shape - 0.6778, 4.064) / (1.5501 * 3.064);
    }

    /** F = 0.0306 (H₁ − 3)^−0.6169, the flow drawn into the layer over the edge speed. */
    static double entrainment(double entrainmentShape) {
        return DRAWN.at(entrainmentShape);
    }

    private static double drawn(double entrainmentShape) {
        return 0.0306 * Math.pow(Math.max(LEAST_EXCESS, entrainmentShape - 3), -0.6169);
    }

    /** c_f = 0.246 · 10^(−0.678 H) Re_θ^−0.268. */
    static double friction(double shape, double momentumReynolds) {
        return frictionByLog(shape, Math.log(momentumReynolds));
    }

    /** The same by the logarithm of Re_θ. */
    static double frictionByLog(double shape, double logMomentumReynolds) {
        return 0.246 * Math.exp(-0.678 * LN_10 * shape - 0.268 * logMomentumReynolds);
    }
}
