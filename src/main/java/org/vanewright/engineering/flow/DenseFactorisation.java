package org.vanewright.engineering.flow;

/**
 * LU factors of a dense matrix with partial pivoting, kept for many right-hand sides.
 *
 * <p>Works row by row on contiguous arrays; the library's decomposition runs along columns. Source: G. H. Golub, C. F. Van
 * Loan, "Matrix Computations", 3rd ed. (1996), algorithm 3.4.1.
 */
final class DenseFactorisation {
    private final double[][] factors;
    private final int[] order;

    /** @param matrix square; overwritten */
    DenseFactorisation(double[][] matrix) {
        factors = matrix;
        order = new int[matrix.length];
        for (int k = 0; k < order.length; k++) {
            order[k] = k;
        }
        for (int k = 0; k < order.length; k++) {
            pivot(k);
            eliminate(k);
        }
    }

    private void pivot(int k) {
        int best = k;
        for (int i = k + 1; i < order.length; i++) {
            if (Math.abs(factors[i][k]) > Math.abs(factors[best][k])) {
                best = i;
            }
        }
        double[] row = factors[k];
        factors[k] = factors[best];
        factors[best] = row;
        int place = order[k];
        order[k] = order[best];
        order[best] = place;
        if (factors[k][k] == 0) {
            throw new ArithmeticException("the matrix is singular at row " + k);
        }
    }

    private void eliminate(int k) {
        double[] pivot = factors[k];
        double scale = 1 / pivot[k];
        for (int i = k + 1; i < order.length; i++) {
            double[] row = factors[i];
            double factor = row[k] * scale;
            row[k] = factor;
            subtract(row, pivot, factor, k + 1);
        }
    }

    private static void subtract(double[] row, double[] pivot, double factor, int from) {
        for (int j = from; j < row.length; j++) {
            row[j] -= factor * pivot[j];
        }
    }

    double[] solve(double[] right) {
        int n = order.length;
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = right[order[i]] - dot(factors[i], x, 0, i);
        }
        for (int i = n - 1; i >= 0; i--) {
            x[i] = (x[i] - dot(factors[i], x, i + 1, n)) / factors[i][i];
        }
        return x;
    }

    /**
     * For many right-hand sides at once.
     *
     * @param right a row for each equation, a column for each right-hand side; unchanged
     */
    double[][] solve(double[][] right) {
        int n = order.length;
        double[][] x = new double[n][];
        for (int i = 0; i < n; i++) {
            x[i] = right[order[i]].clone();
            for (int j = 0; j < i; j++) {
                subtract(x[i], x[j], factors[i][j], 0);
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int j = i + 1; j < n; j++) {
                subtract(x[i], x[j], factors[i][j], 0);
            }
            double scale = 1 / factors[i][i];
            for (int k = 0; k < x[i].length; k++) {
                x[i][k] *= scale;
            }
        }
        return x;
    }

    /** Four sums at a time, which the processor can run side by side. */
    static double dot(double[] a, double[] b, int from, int to) {
        double s0 = 0;
        double s1 = 0;
        double s2 = 0;
        double s3 = 0;
        int i = from;
        for (; i + 3 < to; i += 4) {
            s0 += a[i] * b[i];
            s1 += a[i + 1] * b[i + 1];
            s2 += a[i + 2] * b[i + 2];
            s3 += a[i + 3] * b[i + 3];
        }
        for (; i < to; i++) {
            s0 += a[i] * b[i];
        }
        return s0 + s1 + (s2 + s3);
    }
}
