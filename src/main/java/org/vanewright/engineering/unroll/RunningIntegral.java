package org.vanewright.engineering.unroll;

/** A quantity integrated from the start of its parameter, as a polynomial on each interval of the samples. */
final class RunningIntegral {
    private final SampledCurve grid;
    private final double[][] series;

    RunningIntegral(SampledCurve grid, double[][] values) {
        this.grid = grid;
        this.series = new double[values.length][];
        double sum = 0;
        for (int k = 0; k < values.length; k++) {
            double half = 0.5 * grid.width(k);
            double[] c = GaussRule.integral(GaussRule.series(values[k]));
            for (int i = 0; i < c.length; i++) {
                c[i] *= half;
            }
            double length = GaussRule.value(c, 1);
            c[0] += sum;
            sum += length;
            series[k] = c;
        }
    }

    double at(double u) {
        if (u <= grid.start(0)) {
            return 0;
        }
        int k = grid.intervalOf(u);
        double z = 2 * (u - grid.start(k)) / grid.width(k) - 1;
        return GaussRule.value(series[k], z);
    }
}
