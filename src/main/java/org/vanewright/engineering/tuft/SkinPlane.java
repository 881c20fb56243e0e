package org.vanewright.engineering.tuft;

import java.util.Arrays;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.stat.StatUtils;

/** The skin round a tuft: a plane of grey levels through what does not stand out from it. */
@SuppressWarnings("ArrayRecordComponent") // never compared
record SkinPlane(double[] x, double[] y, double[] levels) {
    /** So many median deviations, as standard deviations of a normal distribution, still count as skin. */
    private static final double APART = 2.5 * 1.4826;

    private static final int ROUNDS = 2;

    /** The levels less the plane's. */
    double[] residuals() {
        double median = StatUtils.percentile(levels, 50);
        double[] rest = Arrays.stream(levels).map(l -> l - median).toArray();
        for (int round = 0; round < ROUNDS; round++) {
            rest = without(plane(rest));
        }
        return rest;
    }

    /** Level, slope across and slope down, by least squares through what lies near the last plane. */
    private double[] plane(double[] rest) {
        double bound =
                APART * StatUtils.percentile(Arrays.stream(rest).map(Math::abs).toArray(), 50) + 1e-6;
        double[][] products = new double[3][3];
        double[] right = new double[3];
        for (int i = 0; i < x.length; i++) {
            if (Math.abs(rest[i]) <= bound) {
                double[] row = {1, x[i] - x[0], y[i] - y[0]};
                for (int j = 0; j < 3; j++) {
                    right[j] += row[j] * levels[i];
                    for (int k = 0; k < 3; k++) {
                        products[j][k] += row[j] * row[k];
                    }
                }
            }
        }
        DecompositionSolver solver = new LUDecomposition(MatrixUtils.createRealMatrix(products)).getSolver();
        return solver.isNonSingular()
                ? solver.solve(MatrixUtils.createRealVector(right)).toArray()
                : new double[] {StatUtils.percentile(levels, 50), 0, 0};
    }

    private double[] without(double[] plane) {
        double[] rest = new double[x.length];
        Arrays.setAll(rest, i -> levels[i] - plane[0] - plane[1] * (x[i] - x[0]) - plane[2] * (y[i] - y[0]));
        return rest;
    }
}
