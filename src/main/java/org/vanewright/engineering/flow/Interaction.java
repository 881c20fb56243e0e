package org.vanewright.engineering.flow;

/**
 * By how much displaced flow must change so that layers and outer flow agree, from what the layers displace beyond a guess.
 *
 * <p>A turbulent layer follows the outer flow as {@link LayerAnswer} says, and the outer flow displaced flow as {@link
 * OuterResponse} does; both linear laws are solved together. A laminar layer is thin, and what it displaces hardly changes:
 * it counts with what the pass made of it. That the layer is replaced by a law of its own in the step, and computed in full
 * to judge it, is the idea of A. E. P. Veldman, "New, quasi-simultaneous method to calculate interacting boundary layers",
 * AIAA Journal 19 (1981) 79-85, the other way about: there the outer flow is.
 */
final class Interaction {
    private final int[] places;
    private final DenseFactorisation factors;
    /** Diagonals that undo the smoothing, lowest first. */
    private final double[][] unsmoothed;

    /**
     * @param places that answer; the others change as the pass says
     * @param answers a row for each of those: change of the flow displaced there by that displaced at each of them; overwritten
     * @param smoothing the three diagonals that undo it, as {@link Diffusion} gives them
     */
    Interaction(int[] places, double[][] answers, double[][] smoothing) {
        this.places = places;
        unsmoothed = smoothing;
        for (int i = 0; i < places.length; i++) {
            double[] row = answers[i];
            int k = places[i];
            for (int j = 0; j < row.length; j++) {
                row[j] = -row[j];
            }
            row[i] += smoothing[1][k];
            if (i > 0 && places[i - 1] == k - 1) {
                row[i - 1] += smoothing[0][k];
            }
            if (i + 1 < row.length && places[i + 1] == k + 1) {
                row[i + 1] += smoothing[2][k];
            }
        }
        factors = new DenseFactorisation(answers);
    }

    double[] step(double[] change) {
        double[] right = new double[places.length];
        for (int i = 0; i < right.length; i++) {
            int k = places[i];
            right[i] = unsmoothed[1][k] * change[k];
            if (i > 0 && places[i - 1] == k - 1) {
                right[i] += unsmoothed[0][k] * change[k - 1];
            }
            if (i + 1 < right.length && places[i + 1] == k + 1) {
                right[i] += unsmoothed[2][k] * change[k + 1];
            }
        }
        double[] answer = factors.solve(right);
        double[] step = change.clone();
        for (int i = 0; i < answer.length; i++) {
            step[places[i]] = answer[i];
        }
        return step;
    }
}
