package org.vanewright.platform.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYBoxAnnotation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.springframework.web.util.HtmlUtils;
import org.w3c.dom.Document;

/**
 * Draws plots as SVG to stand inside a page: no script, no style of its own, colours of the page's style sheet, text as
 * text.
 */
public final class SvgPlots {
    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final Stroke SEAM = new BasicStroke(0.6f);
    private static final Shape DOT =
            new Ellipse2D.Double(-CurveRenderer.DOT / 2, -CurveRenderer.DOT / 2, CurveRenderer.DOT, CurveRenderer.DOT);

    static {
        // The work-around draws turned words as outlines, which nobody can search or hear.
        TextUtils.setUseDrawRotatedStringWorkaround(false);
    }

    private SvgPlots() {}

    /** @param id of the element, unique in its page */
    public static String svg(CurvePlot plot, String id, int widthPx, int heightPx) {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new CurveRenderer(plot);
        // Otherwise dashes begin anew at every point and fill short steps.
        renderer.setDrawSeriesLineAsPath(true);
        for (int i = 0; i < plot.curves().size(); i++) {
            Curve curve = plot.curves().get(i);
            // The library tells series apart by their keys.
            XYSeries series = new XYSeries(curve.name() + "\u200B".repeat(i), false, true);
            curve.points().forEach(p -> series.add(p.x(), p.y()));
            data.addSeries(series);
            renderer.setSeriesPaint(i, PageColours.curve(i));
            renderer.setSeriesStroke(i, PlotStyle.stroke(curve.look()));
            renderer.setSeriesShape(i, DOT);
            renderer.setSeriesLinesVisible(i, curve.look() != Curve.Look.POINTS);
            renderer.setSeriesShapesVisible(i, curve.look().hasShapes());
            renderer.setSeriesShapesFilled(i, curve.look() != Curve.Look.DOTTED_INTERVALS);
        }
        XYPlot drawn = new XYPlot(data, PlotStyle.axis(plot.across()), PlotStyle.axis(plot.up()), renderer);
        plot.marks().forEach(mark -> PlotStyle.mark(drawn, mark));
        return inline(PlotStyle.chart(drawn, plot.curves().size() > 1), plot.title(), id, widthPx, heightPx);
    }

    /** @param id of the element, unique in its page */
    public static String svg(MapPlot plot, String id, int widthPx, int heightPx) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, false);
        double halfWidth = (plot.xs()[1] - plot.xs()[0]) / 2;
        double halfHeight = (plot.ys()[1] - plot.ys()[0]) / 2;
        for (MapRun run : MapRun.of(plot)) {
            double y = plot.ys()[run.row()];
            Color colour = PageColours.step(run.step());
            // The outline closes the hair's breadth that would show between boxes.
            renderer.addAnnotation(
                    new XYBoxAnnotation(
                            plot.xs()[run.first()] - halfWidth,
                            y - halfHeight,
                            plot.xs()[run.last()] + halfWidth,
                            y + halfHeight,
                            SEAM,
                            colour,
                            colour),
                    Layer.BACKGROUND);
        }
        XYPlot drawn = new XYPlot(
                new XYSeriesCollection(), PlotStyle.axis(plot.across()), PlotStyle.axis(plot.up()), renderer);
        plot.marks().forEach(mark -> PlotStyle.mark(drawn, mark));
        return inline(PlotStyle.chart(drawn, false), plot.title(), id, widthPx, heightPx);
    }

    private static String inline(JFreeChart chart, String title, String id, int widthPx, int heightPx) {
        Document document = GenericDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(2);
        SVGGraphics2D graphics = new SVGGraphics2D(context, false);
        chart.draw(graphics, new Rectangle2D.Double(0, 0, widthPx, heightPx));
        StringWriter out = new StringWriter();
        try {
            graphics.stream(graphics.getRoot(), out, false, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return dressed(out.toString(), title, id, widthPx, heightPx);
    }

    private static String dressed(String written, String title, String id, int widthPx, int heightPx) {
        String body =
                written.substring(written.indexOf('>', written.indexOf("<svg")) + 1, written.lastIndexOf("</svg"));
        String unique = body.replace("id=\"", "id=\"" + id + "-")
                .replace("url(#", "url(#" + id + "-")
                .replace("href=\"#", "href=\"#" + id + "-");
        return "<svg class=\"plot\" role=\"img\" viewBox=\"0 0 " + widthPx + " " + heightPx + "\" aria-labelledby=\""
                + id
                + "-title\" xmlns=\"" + SVG + "\"><title id=\"" + id + "-title\">" + HtmlUtils.htmlEscape(title)
                + "</title>" + PageColours.inPage(unique) + "</svg>";
    }
}
