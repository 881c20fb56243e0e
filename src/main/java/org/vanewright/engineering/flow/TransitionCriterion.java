package org.vanewright.engineering.flow;

/**
 * Natural transition by R. Michel, "Étude de la transition sur les profils d'aile", ONERA Rapport 1/1578A (1951), in the
 * fit of T. Cebeci, A. M. O. Smith, "Analysis of Turbulent Boundary Layers" (1974): Re_θ = 1.174 (1 + 22 400/Re_s)
 * Re_s^0.46. For smooth skins in air of little turbulence, 3·10⁵ &lt; Re_s &lt; 2·10⁷.
 */
final class TransitionCriterion {
    private TransitionCriterion() {}

    /** Re_θ at which the layer becomes turbulent, by the Reynolds number of arc length and edge speed. */
    static double momentumReynolds(double arcReynolds) {
        return 1.174 * (1 + 22_400 / arcReynolds) * Math.pow(arcReynolds, 0.46);
    }
}
