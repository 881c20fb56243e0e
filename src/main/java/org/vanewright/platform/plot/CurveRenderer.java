package org.vanewright.platform.plot;

import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;

/** Draws curves; of an interval only the point in its middle has a shape. */
final class CurveRenderer extends XYLineAndShapeRenderer {
    private static final long serialVersionUID = 1L;

    private final transient CurvePlot plot;

    CurveRenderer(CurvePlot plot) {
        super(true, false);
        this.plot = plot;
    }

    @Override
    public boolean getItemShapeVisible(int series, int item) {
        return super.getItemShapeVisible(series, item)
                && (!plot.curves().get(series).look().hasIntervals() || item % 4 == 1);
    }
}
