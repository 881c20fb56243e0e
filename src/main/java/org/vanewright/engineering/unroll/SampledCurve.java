package org.vanewright.engineering.unroll;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Several quantities over one parameter, sampled on intervals that are halved until each is a polynomial of degree
 * {@value GaussRule#SIZE} − 1 to working accuracy; a kink is boxed into an interval too short to matter.
 */
final class SampledCurve {
    /** The quantities at one parameter value. */
    @FunctionalInterface
    interface Quantities {
        double[] at(double u);
    }

    private static final double TOLERANCE = 1e-11;
    private static final int DEEPEST = 10;

    /** A rough outline of many points asks for more intervals than this; then a looser bound has to do. */
    private static final int MANY = 800;

    private static final double LOOSE_TOLERANCE = 1e-9;

    private final double[] breaks;
    /** [interval][quantity][sample]. */
    private final double[][][] samples;

    private SampledCurve(double[] breaks, double[][][] samples) {
        this.breaks = breaks;
        this.samples = samples;
    }

    /**
     * @param edges ascending; the quantities may have kinks there
     * @param scale size of each quantity's integral that counts as 1 for accuracy
     */
    static SampledCurve of(Quantities quantities, double[] edges, double[] scale) {
        List<Double> starts = new ArrayList<>();
        List<double[][]> all = new ArrayList<>();
        for (int i = 0; i + 1 < edges.length; i++) {
            if (edges[i + 1] > edges[i]) {
                refine(quantities, edges[i], edges[i + 1], scale, DEEPEST, starts, all);
            }
        }
        starts.add(edges[edges.length - 1]);
        return new SampledCurve(
                starts.stream().mapToDouble(Double::doubleValue).toArray(), all.toArray(new double[0][][]));
    }

    private static void refine(
            Quantities quantities,
            double from,
            double to,
            double[] scale,
            int depth,
            List<Double> starts,
            List<double[][]> all) {
        double[][] here = sample(quantities, from, to, scale.length);
        if (depth > 0 && !resolved(here, to - from, scale, all.size() < MANY ? TOLERANCE : LOOSE_TOLERANCE)) {
            double middle = 0.5 * (from + to);
            refine(quantities, from, middle, scale, depth - 1, starts, all);
            refine(quantities, middle, to, scale, depth - 1, starts, all);
        } else {
            starts.add(from);
            all.add(here);
        }
    }

    private static double[][] sample(Quantities quantities, double from, double to, int count) {
        double[][] here = new double[count][GaussRule.SIZE];
        for (int i = 0; i < GaussRule.SIZE; i++) {
            double[] at = quantities.at(0.5 * (from + to) + 0.5 * (to - from) * GaussRule.node(i));
            for (int q = 0; q < count; q++) {
                here[q][i] = at[q];
            }
        }
        return here;
    }

    private static boolean resolved(double[][] here, double width, double[] scale, double tolerance) {
        for (int q = 0; q < here.length; q++) {
            double[] c = GaussRule.series(here[q]);
            double tail = Math.abs(c[GaussRule.SIZE - 1]) + Math.abs(c[GaussRule.SIZE - 2]);
            if (tail * width > tolerance * scale[q]) {
                return false;
            }
        }
        return true;
    }

    int intervals() {
        return samples.length;
    }

    double start(int interval) {
        return breaks[interval];
    }

    double width(int interval) {
        return breaks[interval + 1] - breaks[interval];
    }

    double parameter(int interval, int sample) {
        return breaks[interval] + 0.5 * width(interval) * (1 + GaussRule.node(sample));
    }

    double sample(int interval, int quantity, int sample) {
        return samples[interval][quantity][sample];
    }

    int intervalOf(double u) {
        int found = Arrays.binarySearch(breaks, u);
        int interval = found >= 0 ? found : -found - 2;
        return Math.min(Math.max(interval, 0), samples.length - 1);
    }

    /** The integral of one quantity from the start of the parameter. */
    RunningIntegral integral(int quantity) {
        double[][] values = new double[samples.length][];
        for (int k = 0; k < samples.length; k++) {
            values[k] = samples[k][quantity];
        }
        return new RunningIntegral(this, values);
    }

    /** The integral of a quantity made from samples at the same places, [interval][sample]. */
    RunningIntegral integral(double[][] values) {
        return new RunningIntegral(this, values);
    }
}
