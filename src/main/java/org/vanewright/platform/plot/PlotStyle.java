package org.vanewright.platform.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Stroke;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYPointerAnnotation;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleAnchor;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;

/** The look that all plots share. */
final class PlotStyle {
    static final Font FONT = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
    private static final Color CLEAR = new Color(0, 0, 0, 0);
    private static final Stroke HAIR = new BasicStroke(0.7f);
    private static final double SLANT = Math.PI / 3;
    private static final float[] DASHES = {7, 4};
    private static final float[] DOTS = {1.5f, 3.5f};

    private PlotStyle() {}

    static Stroke stroke(Curve.Look look) {
        return switch (look) {
            case LINE, POINTS -> new BasicStroke(2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
            case DASHED -> new BasicStroke(2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, DASHES, 0);
            case INTERVALS -> new BasicStroke(1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
            case DOTTED_INTERVALS -> new BasicStroke(1.4f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1, DOTS, 0);
            case DOTTED -> new BasicStroke(2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1, DOTS, 0);
        };
    }

    static NumberAxis axis(PlotAxis axis) {
        NumberAxis number = new NumberAxis(axis.label());
        number.setAutoRangeIncludesZero(false);
        number.setLabelFont(FONT);
        number.setTickLabelFont(FONT);
        number.setLabelPaint(PageColours.INK);
        number.setTickLabelPaint(PageColours.SOFT_INK);
        number.setAxisLinePaint(PageColours.SOFT_INK);
        number.setTickMarkPaint(PageColours.SOFT_INK);
        number.setInverted(axis.reversed());
        if (axis.whole()) {
            number.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        }
        if (axis.low() != null) {
            number.setLowerBound(axis.low());
        }
        if (axis.high() != null) {
            number.setUpperBound(axis.high());
        }
        return number;
    }

    static JFreeChart chart(XYPlot plot, boolean legend) {
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setDomainGridlinePaint(PageColours.RULE);
        plot.setRangeGridlinePaint(PageColours.RULE);
        plot.setDomainGridlineStroke(HAIR);
        plot.setRangeGridlineStroke(HAIR);
        plot.setAxisOffset(new RectangleInsets(2, 2, 2, 2));
        JFreeChart chart = new JFreeChart(null, FONT, plot, legend);
        chart.setBackgroundPaint(CLEAR);
        chart.setPadding(new RectangleInsets(4, 4, 4, 12));
        if (chart.getLegend() != null) {
            chart.getLegend().setItemFont(FONT);
            chart.getLegend().setItemPaint(PageColours.INK);
            chart.getLegend().setBackgroundPaint(CLEAR);
            chart.getLegend().setFrame(BlockBorder.NONE);
        }
        return chart;
    }

    static void mark(XYPlot plot, PlotMark mark) {
        if (mark.y() == null) {
            ValueMarker line = new ValueMarker(mark.x(), PageColours.ACCENT, new BasicStroke(1.4f));
            line.setLabel(mark.label());
            line.setLabelFont(FONT);
            line.setLabelPaint(PageColours.ACCENT);
            line.setLabelBackgroundColor(CLEAR);
            // Words run towards the middle, where they are not cut off.
            boolean atRight = share(plot.getDomainAxis(), mark.x()) > 0.8;
            line.setLabelAnchor(atRight ? RectangleAnchor.TOP_LEFT : RectangleAnchor.TOP_RIGHT);
            line.setLabelTextAnchor(atRight ? TextAnchor.TOP_RIGHT : TextAnchor.TOP_LEFT);
            plot.addDomainMarker(line);
            return;
        }
        XYTextAnnotation point = new XYTextAnnotation("⊕", mark.x(), mark.y());
        point.setFont(FONT.deriveFont(Font.BOLD));
        point.setPaint(PageColours.ACCENT);
        point.setTextAnchor(TextAnchor.CENTER);
        plot.addAnnotation(point);
        // Neighbours on one curve point out of each other's way.
        boolean every2nd = plot.getAnnotations().size() / 2 % 2 == 1;
        plot.addAnnotation(label(plot, mark.label(), mark.x(), mark.y(), every2nd));
    }

    /** Beside its point, towards the middle of the plot, where it is not cut off. */
    private static XYPointerAnnotation label(XYPlot plot, String words, double x, double y, boolean down) {
        boolean atRight = share(plot.getDomainAxis(), x) > 0.6;
        double up = share(plot.getRangeAxis(), y);
        boolean atTop = up > 0.75 || down && up > 0.2;
        double aside = atRight ? Math.PI - SLANT : SLANT;
        XYPointerAnnotation label = new XYPointerAnnotation(words, x, y, atTop ? aside : -aside);
        label.setFont(FONT.deriveFont(Font.BOLD));
        label.setPaint(PageColours.ACCENT);
        label.setArrowPaint(PageColours.ACCENT);
        label.setTipRadius(7);
        label.setBaseRadius(30);
        label.setLabelOffset(3);
        label.setTextAnchor(atRight ? TextAnchor.CENTER_RIGHT : TextAnchor.CENTER_LEFT);
        return label;
    }

    /** How far right, or up, a value stands on the drawn axis, from 0 to 1. */
    private static double share(ValueAxis axis, double value) {
        double share = (value - axis.getLowerBound()) / (axis.getUpperBound() - axis.getLowerBound());
        return axis.isInverted() ? 1 - share : share;
    }
}
