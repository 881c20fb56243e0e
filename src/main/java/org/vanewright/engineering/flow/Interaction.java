package org.vanewright.engineering.flow;

/**
 * By how much displaced flow must change so that layers and outer flow agree, from what the layers displace beyond a guess.
 *
 * <p>Where the edge speed changes over a length that is short beside the layer's own memory, friction and entrainment do
 * nothing, and the layer follows it by local laws: with λ = ln U, d ln θ = −(H + 2) dλ and d(U θ H₁) = 0 in a turbulent
 * layer and behind its separation, d ln θ = −3 dλ in a laminar one by Thwaites. Then U θ H falls by a factor of its own with U, and U answers
 * displaced flow as the outer flow says; both linear laws are solved together. That the layer is replaced by a local law
 * in the step, and computed in full to judge it, is the idea of A. E. P. Veldman, "New, quasi-simultaneous method to
 * calculate interacting boundary layers", AIAA Journal 19 (1981) 79-85, the other way about: there the outer flow is.
 */
final class Interaction {
    private final DenseFactorisation factors;
    /** Diagonals that undo the smoothing, lowest first. */
    private final double[][] unsmoothed;

    /**
     * @param smoothing the three diagonals that undo it, as {@link Diffusion} gives them
     * @param gain change of displaced flow over that of vorticity, at the places of the grid
     */
    Interaction(OuterResponse outer, double[][] smoothing, double[] gain) {
        int n = gain.length;
        unsmoothed = smoothing;
        double[][] matrix = new double[n][n];
        for (int i = 0; i < n; i++) {
            double[] answer = outer.at(i);
            for (int j = 0; j < n; j++) {
                matrix[i][j] = -gain[i] * answer[j];
            }
            matrix[i][i] += smoothing[1][i];
            if (i > 0) {
                matrix[i][i - 1] += smoothing[0][i];
            }
            if (i + 1 < n) {
                matrix[i][i + 1] += smoothing[2][i];
            }
        }
        factors = new DenseFactorisation(matrix);
    }

    double[] step(double[] change) {
        int n = change.length;
        double[] right = new double[n];
        for (int i = 0; i < n; i++) {
            right[i] = unsmoothed[1][i] * change[i]
                    + (i > 0 ? unsmoothed[0][i] * change[i - 1] : 0)
                    + (i + 1 < n ? unsmoothed[2][i] * change[i + 1] : 0);
        }
        return factors.solve(right);
    }
}
