package org.vanewright.platform.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * Neighbouring cells of one row of a map that have one colour.
 *
 * @param row index
 * @param first column
 * @param last column
 * @param step index of the colour
 */
record MapRun(int row, int first, int last, int step) {
    private static final int NONE = -1;

    /** All cells that have a value. */
    static List<MapRun> of(MapPlot plot) {
        List<MapRun> runs = new ArrayList<>();
        for (int row = 0; row < plot.ys().length; row++) {
            int first = 0;
            for (int column = 1; column <= plot.xs().length; column++) {
                int step = step(plot, row, first);
                if (column == plot.xs().length || step(plot, row, column) != step) {
                    if (step != NONE) {
                        runs.add(new MapRun(row, first, column - 1, step));
                    }
                    first = column;
                }
            }
        }
        return runs;
    }

    private static int step(MapPlot plot, int row, int column) {
        double value = plot.values()[row][column];
        if (Double.isNaN(value)) {
            return NONE;
        }
        return (int) plot.steps().stream().filter(border -> value >= border).count();
    }
}
