package org.vanewright.engineering.flow;

import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/**
 * Shape factor, friction and thickness of a laminar layer by Thwaites' parameter λ = (θ²/ν) dU/ds.
 *
 * <p>The correlations are those of T. Cebeci, P. Bradshaw, "Momentum Transfer in Boundary Layers" (1977), section 5.6, for
 * the method of B. Thwaites, "Approximate calculation of the laminar boundary layer", Aeronautical Quarterly 1 (1949)
 * 245-280. Separation at λ = −0.09.
 */
final class ThwaitesClosure {
    static final double SEPARATION = -0.09;
    /** The correlations' upper end; λ of a stagnation point is 0.075. */
    private static final double STRONGEST = 0.1;

    /**
     * (δ₉₉ − δ*)/θ over λ, from solutions of f‴ + f f″ + β(1 − f′²) = 0 (V. M. Falkner, S. W. Skan, Philosophical Magazine
     * 12 (1931) 865-896) at β = −0.1988 to 1.
     */
    private static final PolynomialSplineFunction EXCESS = new LinearInterpolator()
            .interpolate(
                    new double[] {
                        -0.06813, -0.06764, -0.06591, -0.06315, -0.05801, -0.04879, -0.04061, -0.03324, -0.02653,
                        -0.02038, -0.01203, -0.00696, 0, 0.01019, 0.01896, 0.03333, 0.04464, 0.06134, 0.08546
                    },
                    new double[] {
                        4.1509, 4.1558, 4.1727, 4.1987, 4.2462, 4.3303, 4.4051, 4.4736, 4.5369, 4.5962, 4.6787, 4.7301,
                        4.8022, 4.9121, 5.0105, 5.1815, 5.3249, 5.5536, 5.9232
                    });

    private static final double LEAST = EXCESS.getKnots()[0];
    private static final double GREATEST = EXCESS.getKnots()[EXCESS.getN()];

    private ThwaitesClosure() {}

    /** δ* / θ. */
    static double shapeFactor(double lambda) {
        double l = within(lambda);
        return l >= 0 ? 2.61 - 3.75 * l + 5.24 * l * l : 2.088 + 0.0731 / (0.14 + l);
    }

    /** l(λ) = τ θ / (μ U), not below 0. */
    static double shear(double lambda) {
        double l = within(lambda);
        double shear = l >= 0 ? 0.22 + 1.57 * l - 1.8 * l * l : 0.22 + 1.402 * l + 0.018 * l / (0.107 + l);
        return Math.max(0, shear);
    }

    /** (δ₉₉ − δ*) / θ. */
    static double excess(double lambda) {
        return EXCESS.value(Math.max(LEAST, Math.min(GREATEST, lambda)));
    }

    private static double within(double lambda) {
        return Math.max(SEPARATION, Math.min(STRONGEST, lambda));
    }
}
