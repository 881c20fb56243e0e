package org.vanewright.platform.plot;

import org.vanewright.platform.picture.SheetStyle;

/** Plots as files of their own, which bring the colours of the pages' style sheet for light and dark with them. */
public final class PlotFiles {
    private static final String RULES = SheetStyle.COLOUR_RULES
            + "text { font-family: sans-serif; paint-order: stroke; stroke: var(--sheet); stroke-width: 3px; }\n";

    private PlotFiles() {}

    /** @return a whole SVG document */
    public static String svg(CurvePlot plot) {
        return SheetStyle.in(SvgPlots.svg(plot, "plot", DrawnPlot.WIDTH_PX, DrawnPlot.HEIGHT_PX), RULES);
    }
}
