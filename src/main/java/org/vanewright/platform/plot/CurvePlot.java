package org.vanewright.platform.plot;

import java.util.List;

/**
 * Curves over one axis.
 *
 * @param title what it shows, for whoever does not see it
 * @param across the lower axis
 * @param up the left axis
 * @param curves at most six, which is as many as can be told apart
 * @param marks places to point out
 */
public record CurvePlot(String title, PlotAxis across, PlotAxis up, List<Curve> curves, List<PlotMark> marks) {
    /** As many as the page has colours for. */
    public static final int MOST_CURVES = 6;

    public CurvePlot {
        curves = List.copyOf(curves);
        marks = List.copyOf(marks);
        if (curves.size() > MOST_CURVES) {
            throw new IllegalArgumentException("at most " + MOST_CURVES + " curves can be told apart");
        }
    }
}
