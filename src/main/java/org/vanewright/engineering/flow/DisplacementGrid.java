package org.vanewright.engineering.flow;

import java.util.stream.IntStream;

/**
 * The panel ends between which displaced flow runs linearly: every end of up to about 100 panels, every second of 200, and
 * so on. Ripples finer than that are thinner than the layer and mean nothing to it.
 */
final class DisplacementGrid {
    private static final int USUAL = 100;

    private final double[] fine;
    private final int[] kept;
    private final double[] arc;

    DisplacementGrid(double[] arc) {
        fine = arc;
        int last = arc.length - 1;
        int stride = Math.max(1, (int) Math.round((double) last / USUAL));
        int pieces = (last + stride - 1) / stride;
        kept = IntStream.rangeClosed(0, pieces)
                .map(i -> Math.min(last, i * stride))
                .toArray();
        this.arc = pick(arc);
    }

    /** Arc lengths of the kept ends. */
    double[] arc() {
        return arc;
    }

    double[] pick(double[] values) {
        double[] picked = new double[kept.length];
        for (int i = 0; i < picked.length; i++) {
            picked[i] = values[kept[i]];
        }
        return picked;
    }

    double[] expand(double[] picked) {
        double[] values = new double[fine.length];
        values[0] = picked[0];
        for (int i = 1; i < kept.length; i++) {
            double from = fine[kept[i - 1]];
            double width = fine[kept[i]] - from;
            for (int j = kept[i - 1] + 1; j <= kept[i]; j++) {
                values[j] = picked[i - 1] + (fine[j] - from) / width * (picked[i] - picked[i - 1]);
            }
        }
        return values;
    }
}
