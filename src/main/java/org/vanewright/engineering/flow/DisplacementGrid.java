package org.vanewright.engineering.flow;

import java.util.stream.IntStream;

/**
 * The panel ends that displaced flow is known by: every end of up to about 100 panels, every second of 200, and so on.
 * Ripples finer than that are thinner than the layer and mean nothing to it. Between them it runs smoothly, a cubic with
 * the slopes of the parabolas through three neighbours: a kink would be a step of the sources, and that a peak of the speed.
 */
final class DisplacementGrid {
    private static final int USUAL = 100;
    /** Places on which the value at an end depends. */
    private static final int WIDTH = 4;

    private final int[] kept;
    private final double[] arc;
    /** At each end, the first place on which it depends, and by how much on that and those behind it. */
    private final int[] first;

    private final double[][] share;

    DisplacementGrid(double[] fine) {
        int last = fine.length - 1;
        int stride = Math.max(1, (int) Math.round((double) last / USUAL));
        int pieces = (last + stride - 1) / stride;
        kept = IntStream.rangeClosed(0, pieces)
                .map(i -> Math.min(last, i * stride))
                .toArray();
        arc = IntStream.of(kept).mapToDouble(end -> fine[end]).toArray();
        first = new int[fine.length];
        share = new double[fine.length][WIDTH];
        for (int piece = 0; piece < pieces; piece++) {
            for (int end = kept[piece]; end <= kept[piece + 1]; end++) {
                share(end, piece, fine[end]);
            }
        }
    }

    private void share(int end, int piece, double at) {
        int from = Math.max(0, Math.min(piece - 1, arc.length - WIDTH));
        double[] near = new double[WIDTH];
        System.arraycopy(arc, from, near, 0, WIDTH);
        double width = arc[piece + 1] - arc[piece];
        double t = (at - arc[piece]) / width;
        double r = 1 - t;
        double[] unit = new double[WIDTH];
        first[end] = from;
        for (int k = 0; k < WIDTH; k++) {
            unit[k] = 1;
            double[] slopes = SmoothCurve.slopes(near, unit);
            share[end][k] = r * r * (1 + 2 * t) * unit[piece - from]
                    + t * t * (3 - 2 * t) * unit[piece + 1 - from]
                    + width * t * r * (r * slopes[piece - from] - t * slopes[piece + 1 - from]);
            unit[k] = 0;
        }
    }

    /** Arc lengths of the kept ends. */
    double[] arc() {
        return arc;
    }

    /** Panel end at a place of the grid. */
    int end(int place) {
        return kept[place];
    }

    /** Factors of the places from factors of all ends. */
    double[] gather(double[] factors) {
        double[] gathered = new double[arc.length];
        for (int i = 0; i < first.length; i++) {
            for (int k = 0; k < WIDTH; k++) {
                gathered[first[i] + k] += factors[i] * share[i][k];
            }
        }
        return gathered;
    }
}
