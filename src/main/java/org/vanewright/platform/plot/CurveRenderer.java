package org.vanewright.platform.plot;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CrosshairState;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYItemRendererState;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYDataset;
import org.jspecify.annotations.Nullable;

/** Draws curves; of an interval only the point in its middle has a shape. */
final class CurveRenderer extends XYLineAndShapeRenderer {
    private static final long serialVersionUID = 1L;

    /** Diameter of a point. */
    static final float DOT = 6;

    private static final Stroke ROUND = new BasicStroke(DOT, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);

    private final transient CurvePlot plot;
    private transient Path2D dots = new Path2D.Double();

    CurveRenderer(CurvePlot plot) {
        super(true, false);
        this.plot = plot;
    }

    @Override
    public boolean getItemShapeVisible(int series, int item) {
        return super.getItemShapeVisible(series, item)
                && (!plot.curves().get(series).look().hasIntervals() || item % 4 == 1);
    }

    @Override
    public void drawItem(
            Graphics2D graphics,
            XYItemRendererState state,
            Rectangle2D area,
            @Nullable PlotRenderingInfo info,
            XYPlot drawn,
            ValueAxis across,
            ValueAxis up,
            XYDataset data,
            int series,
            int item,
            @Nullable CrosshairState crosshair,
            int pass) {
        if (plot.curves().get(series).look() != Curve.Look.POINTS) {
            super.drawItem(graphics, state, area, info, drawn, across, up, data, series, item, crosshair, pass);
        } else if (isItemPass(pass)) {
            double x = across.valueToJava2D(data.getXValue(series, item), area, drawn.getDomainAxisEdge());
            double y = up.valueToJava2D(data.getYValue(series, item), area, drawn.getRangeAxisEdge());
            dot(x, y, item == state.getFirstItemIndex());
            if (item == state.getLastItemIndex()) {
                graphics.setPaint(getItemPaint(series, item));
                graphics.setStroke(ROUND);
                graphics.draw(dots);
            }
        }
    }

    /** All points of a curve are one path of strokes without length: a twentieth of as many filled shapes. */
    private void dot(double x, double y, boolean first) {
        if (first) {
            dots = new Path2D.Double();
        }
        if (!Double.isNaN(y)) {
            dots.moveTo(x, y);
            dots.lineTo(x, y);
        }
    }
}
