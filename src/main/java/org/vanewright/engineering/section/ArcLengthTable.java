package org.vanewright.engineering.section;

import java.util.Arrays;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Arc length of a curve over its parameter, and back.
 *
 * <p>The curve is cut into panels on which ten-point Gauss-Legendre quadrature of the speed agrees with that of both
 * halves to {@value #PANEL_TOLERANCE}; a query then integrates inside one panel only.
 */
final class ArcLengthTable {
    static final int MAX_EVALUATIONS = 300;
    private static final double PANEL_TOLERANCE = 1e-13;
    private static final int MAX_DEPTH = 30;
    private static final int POINTS = 10;
    private static final int MOST_STEPS = 6;
    /** Of a step over the panel, after which the next would lie within rounding: the error falls with its square. */
    private static final double SETTLED = 1e-8;

    private static final double[] ABSCISSA = new double[POINTS];
    private static final double[] WEIGHT = new double[POINTS];

    static {
        GaussIntegrator rule = new GaussIntegratorFactory(20).legendre(POINTS);
        for (int i = 0; i < POINTS; i++) {
            ABSCISSA[i] = rule.getPoint(i);
            WEIGHT[i] = rule.getWeight(i);
        }
    }

    private final SkinCurve curve;
    private double[] nodes = new double[64];
    private double[] arcs = new double[64];
    private int size;

    ArcLengthTable(SkinCurve curve) {
        this.curve = curve;
        double[] breaks = curve.breaks();
        append(breaks[0], 0);
        for (int i = 0; i + 1 < breaks.length; i++) {
            addPanels(breaks[i], breaks[i + 1], integral(breaks[i], breaks[i + 1]), 0);
        }
        nodes = Arrays.copyOf(nodes, size);
        arcs = Arrays.copyOf(arcs, size);
    }

    /** Whole length. */
    double length() {
        return arcs[size - 1];
    }

    int nodeCount() {
        return size;
    }

    /** Parameter at a node, in increasing order. */
    double node(int index) {
        return nodes[index];
    }

    /** Arc length from the start to a parameter value within the curve. */
    double arcAt(double parameter) {
        int panel = panelOf(nodes, parameter);
        return arcs[panel] + integral(nodes[panel], parameter);
    }

    /** Parameter at an arc length from 0 to {@link #length}. */
    double parameterAt(double arc) {
        int panel = panelOf(arcs, arc);
        double low = nodes[panel];
        double high = nodes[panel + 1];
        double wanted = arc - arcs[panel];
        if (wanted <= 0) {
            return low;
        }
        if (integral(low, high) <= wanted) {
            return high;
        }
        double start = Math.min(high, low + (high - low) * wanted / (arcs[panel + 1] - arcs[panel]));
        double found = byNewton(low, high, wanted, start);
        if (!Double.isNaN(found)) {
            return found;
        }
        return solver().solve(MAX_EVALUATIONS, u -> integral(low, u) - wanted, low, high, start);
    }

    /** Quick, since speed hardly changes within a panel and is the derivative; NaN where it does not settle. */
    private double byNewton(double low, double high, double wanted, double start) {
        double at = start;
        for (int i = 0; i < MOST_STEPS; i++) {
            double next = Math.max(low, Math.min(high, at - (integral(low, at) - wanted) / curve.speed(at)));
            if (Math.abs(next - at) <= SETTLED * (high - low)) {
                return next;
            }
            at = next;
        }
        return Double.NaN;
    }

    /** The root finder every query uses: to 1e-14, within a known bracket. */
    static BracketingNthOrderBrentSolver solver() {
        return new BracketingNthOrderBrentSolver(1e-14, 1e-14, 1e-15, 5);
    }

    private void addPanels(double low, double high, double whole, int depth) {
        double middle = 0.5 * (low + high);
        double first = integral(low, middle);
        double second = integral(middle, high);
        if (depth >= MAX_DEPTH || Math.abs(first + second - whole) <= PANEL_TOLERANCE) {
            append(high, arcs[size - 1] + whole);
        } else {
            addPanels(low, middle, first, depth + 1);
            addPanels(middle, high, second, depth + 1);
        }
    }

    private void append(double node, double arc) {
        if (size == nodes.length) {
            nodes = Arrays.copyOf(nodes, 2 * size);
            arcs = Arrays.copyOf(arcs, 2 * size);
        }
        nodes[size] = node;
        arcs[size++] = arc;
    }

    private double integral(double from, double to) {
        return integral(curve, from, to);
    }

    /** Arc length between two parameter values close together, by one application of the rule. */
    static double integral(SkinCurve curve, double from, double to) {
        double middle = 0.5 * (from + to);
        double half = 0.5 * (to - from);
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            sum += WEIGHT[i] * curve.speed(middle + half * ABSCISSA[i]);
        }
        return half * sum;
    }

    private static int panelOf(double[] grid, double value) {
        int found = Arrays.binarySearch(grid, value);
        int panel = found >= 0 ? found : -found - 2;
        return Math.max(0, Math.min(panel, grid.length - 2));
    }
}
