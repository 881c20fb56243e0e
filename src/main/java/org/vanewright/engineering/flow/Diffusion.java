package org.vanewright.engineering.flow;

/** Smoothing along the skin by one implicit step of diffusion, which keeps the integral. */
final class Diffusion {
    private Diffusion() {}

    /** The three diagonals of what {@link #of} undoes, lowest first. */
    static double[][] diagonals(double[] c, double[] place) {
        int n = c.length;
        double[][] diagonals = new double[3][n];
        for (int i = 0; i < n; i++) {
            double width = 0.5 * (place[Math.min(i + 1, n - 1)] - place[Math.max(i - 1, 0)]);
            double before = i == 0 ? 0 : 0.5 * (c[i - 1] + c[i]) / (place[i] - place[i - 1]);
            double after = i == n - 1 ? 0 : 0.5 * (c[i] + c[i + 1]) / (place[i + 1] - place[i]);
            diagonals[0][i] = -before / width;
            diagonals[1][i] = 1 + (before + after) / width;
            diagonals[2][i] = -after / width;
        }
        return diagonals;
    }

    /**
     * Solves x − (c x′)′ = values with x′ = 0 at both ends, by elimination of the three diagonals.
     *
     * @param c at the places, a length squared
     * @param place increasing
     */
    static double[] of(double[] values, double[] c, double[] place) {
        int n = values.length;
        double[] flow = new double[n + 1];
        for (int i = 1; i < n; i++) {
            flow[i] = 0.5 * (c[i - 1] + c[i]) / (place[i] - place[i - 1]);
        }
        double[] carried = new double[n];
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            double left = i == 0 ? place[0] : place[i - 1];
            double right = i == n - 1 ? place[i] : place[i + 1];
            double width = 0.5 * (right - left);
            double before = i == 0 ? 0 : flow[i];
            double pivot = width + before + flow[i + 1] - (i == 0 ? 0 : before * carried[i - 1]);
            carried[i] = flow[i + 1] / pivot;
            x[i] = (width * values[i] + (i == 0 ? 0 : before * x[i - 1])) / pivot;
        }
        for (int i = n - 2; i >= 0; i--) {
            x[i] += carried[i] * x[i + 1];
        }
        return x;
    }
}
