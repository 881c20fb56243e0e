package org.vanewright.platform.plot;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.platform.page.HtmlRows;

/**
 * A plot ready for a page.
 *
 * @param plot what is drawn
 * @param svg its drawing, to stand in the page; empty where it is a file
 * @param address of that file; null where the drawing stands in the page
 * @param caption what stands beneath it
 */
public record DrawnPlot(
        CurvePlot plot, String svg, @Nullable String address, String caption) {
    private static final MathContext FOUR = new MathContext(4, RoundingMode.HALF_UP);
    public static final int WIDTH_PX = 720;
    public static final int HEIGHT_PX = 380;

    private static final int MOST_ROWS = 30;

    /** @param id of its drawing, unique in its page */
    public static DrawnPlot of(CurvePlot plot, String id, String caption) {
        return new DrawnPlot(plot, SvgPlots.svg(plot, id, WIDTH_PX, HEIGHT_PX), null, caption);
    }

    /** @param address of its drawing by {@link PlotFiles}, for plots that make a page heavy */
    public static DrawnPlot at(String address, CurvePlot plot, String caption) {
        return new DrawnPlot(plot, "", address, caption);
    }

    /** Points of a curve, evenly thinned to what a person can read, as rows of the table beneath it. */
    public String rows(Curve curve) {
        List<PlotPoint> points =
                curve.points().stream().filter(p -> !Double.isNaN(p.y())).toList();
        HtmlRows rows = new HtmlRows();
        int most = Math.min(MOST_ROWS, points.size());
        for (int i = 0; i < most; i++) {
            PlotPoint point = points.get(most == 1 ? 0 : i * (points.size() - 1) / (most - 1));
            rows.rowOfWords(curve.name()).figure(digits(point.x())).figure(digits(point.y()));
        }
        return rows.html();
    }

    /** Four digits, as many as a plot is worth. */
    static String digits(double value) {
        if (!Double.isFinite(value)) {
            return String.valueOf(value);
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(FOUR);
        if (rounded.signum() == 0) {
            return "0";
        }
        int before = rounded.precision() - rounded.scale();
        boolean plain = before >= -3 && before <= 4;
        return plain ? rounded.stripTrailingZeros().toPlainString() : String.format(Locale.ROOT, "%.3e", value);
    }
}
