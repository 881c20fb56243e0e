package org.vanewright.engineering.unroll;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/** Gauss-Legendre nodes of one interval, and the Legendre series through samples at them. */
final class GaussRule {
    /** Samples per interval. */
    static final int SIZE = 8;

    private static final double[] NODES = new double[SIZE];
    private static final double[] WEIGHTS = new double[SIZE];
    /** TO_SERIES[k][i]: share of sample i in coefficient k. */
    private static final double[][] TO_SERIES = new double[SIZE][SIZE];

    static {
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(SIZE);
        for (int i = 0; i < SIZE; i++) {
            NODES[i] = rule.getPoint(i);
            WEIGHTS[i] = rule.getWeight(i);
            double[] p = polynomials(NODES[i], SIZE);
            for (int k = 0; k < SIZE; k++) {
                TO_SERIES[k][i] = (2 * k + 1) / 2.0 * WEIGHTS[i] * p[k];
            }
        }
    }

    private GaussRule() {}

    static double node(int i) {
        return NODES[i];
    }

    static double weight(int i) {
        return WEIGHTS[i];
    }

    /** Coefficients of the Legendre series through the samples. */
    static double[] series(double[] samples) {
        double[] c = new double[SIZE];
        for (int k = 0; k < SIZE; k++) {
            for (int i = 0; i < SIZE; i++) {
                c[k] += TO_SERIES[k][i] * samples[i];
            }
        }
        return c;
    }

    /** Series of the integral from −1, by ∫P_k = (P_{k+1} − P_{k−1})/(2k+1). */
    static double[] integral(double[] c) {
        double[] result = new double[c.length + 1];
        result[0] = c[0];
        result[1] = c[0];
        for (int k = 1; k < c.length; k++) {
            double share = c[k] / (2 * k + 1);
            result[k + 1] += share;
            result[k - 1] -= share;
        }
        return result;
    }

    static double value(double[] c, double z) {
        double before = 1;
        double now = z;
        double sum = c[0] + c[1] * z;
        for (int k = 1; k + 1 < c.length; k++) {
            double next = ((2 * k + 1) * z * now - k * before) / (k + 1);
            before = now;
            now = next;
            sum += c[k + 1] * next;
        }
        return sum;
    }

    private static double[] polynomials(double z, int count) {
        double[] p = new double[count];
        p[0] = 1;
        p[1] = z;
        for (int k = 1; k + 1 < count; k++) {
            p[k + 1] = ((2 * k + 1) * z * p[k] - k * p[k - 1]) / (k + 1);
        }
        return p;
    }
}
