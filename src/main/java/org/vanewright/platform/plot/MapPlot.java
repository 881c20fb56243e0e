package org.vanewright.platform.plot;

import java.util.List;

/**
 * A value over two quantities, as coloured cells.
 *
 * @param title what it shows, for whoever does not see it
 * @param across the lower axis, with both its ends
 * @param up the left axis, with both its ends
 * @param value quantity and unit of the value
 * @param xs centres of the columns, evenly spaced, rising
 * @param ys centres of the rows, evenly spaced, rising
 * @param values by row, then column; NaN where there is none
 * @param steps borders between colours, rising; one colour more than borders, from pale to strong
 * @param marks places to point out
 */
@SuppressWarnings("ArrayRecordComponent") // drawn once, never compared
public record MapPlot(
        String title,
        PlotAxis across,
        PlotAxis up,
        String value,
        double[] xs,
        double[] ys,
        double[][] values,
        List<Double> steps,
        List<PlotMark> marks) {
    /** As many as the page has colours for. */
    public static final int MOST_STEPS = 4;

    public MapPlot {
        steps = List.copyOf(steps);
        marks = List.copyOf(marks);
        if (steps.isEmpty() || steps.size() > MOST_STEPS) {
            throw new IllegalArgumentException("one to " + MOST_STEPS + " borders between colours");
        }
    }
}
