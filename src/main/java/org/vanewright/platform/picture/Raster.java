package org.vanewright.platform.picture;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.GlyphPaths;
import org.vanewright.engineering.drawing.Lettering;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;

/**
 * Paints drawings and lettering as pixels, with the letters of {@link Lettering} as outlines, so that the picture depends on
 * nothing that is installed on a machine.
 */
public final class Raster {
    private static final double PIXELS_PER_PEN_MM = 6;

    private final BufferedImage image;
    private final Graphics2D graphics;

    /**
     * Colours.
     *
     * @param paper behind all
     * @param ink of lines and letters
     * @param soft of what stands back
     * @param tint of faint areas
     * @param accent of what calls for attention
     * @param softAccent of areas that do
     */
    public record Inks(Color paper, Color ink, Color soft, Color tint, Color accent, Color softAccent) {}

    private final Inks inks;

    public Raster(int widthPx, int heightPx, Inks inks) {
        this.inks = inks;
        this.image = new BufferedImage(widthPx, heightPx, BufferedImage.TYPE_INT_RGB);
        this.graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setColor(inks.paper());
        graphics.fillRect(0, 0, widthPx, heightPx);
    }

    /**
     * One line of text.
     *
     * @param x left end, px
     * @param y base line, px from the top
     * @param capPx height of a capital
     * @param bold how many px the letters are thickened by
     */
    public void text(String text, double x, double y, double capPx, double bold, Color colour) {
        graphics.setColor(colour);
        Path2D outline = GlyphPaths.of(text, capPx);
        outline.transform(new AffineTransform(1, 0, 0, -1, x, y));
        graphics.fill(outline);
        if (bold > 0) {
            graphics.setStroke(new BasicStroke((float) bold, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            graphics.draw(outline);
        }
    }

    /** A filled outline in px from the top left. */
    public void area(Color colour, double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        graphics.setColor(colour);
        graphics.fill(path);
    }

    /** A drawing without its lettering, as large as fits into a box, in its middle. */
    public void drawing(Drawing drawing, double x, double y, double width, double height) {
        Bounds bounds = Bounds.of(drawing.shapes().stream()
                .filter(s -> !(s instanceof Shape.Text))
                .toList());
        double scale = Math.min(width / Math.max(bounds.widthMm(), 1e-6), height / Math.max(bounds.heightMm(), 1e-6));
        Point2 middle = bounds.centre();
        AffineTransform place = new AffineTransform();
        place.translate(x + width / 2, y + height / 2);
        place.scale(scale, -scale);
        place.translate(-middle.x(), -middle.y());
        for (Shape shape : drawing.shapes()) {
            if (shape instanceof Shape.Polyline line) {
                draw(path(line).createTransformedShape(place), line.pen(), line.closed() ? line.fill() : Fill.NONE);
            } else if (shape instanceof Shape.Circle circle) {
                double r = circle.radiusMm();
                Ellipse2D round = new Ellipse2D.Double(
                        circle.centre().x() - r, circle.centre().y() - r, 2 * r, 2 * r);
                draw(place.createTransformedShape(round), circle.pen(), circle.fill());
            }
        }
    }

    private static Path2D path(Shape.Polyline line) {
        Path2D path = new Path2D.Double();
        path.moveTo(line.points().get(0).x(), line.points().get(0).y());
        line.points().stream().skip(1).forEach(p -> path.lineTo(p.x(), p.y()));
        if (line.closed()) {
            path.closePath();
        }
        return path;
    }

    private void draw(java.awt.Shape shape, Pen pen, Fill fill) {
        Color area = colour(fill);
        if (area != null) {
            graphics.setColor(area);
            graphics.fill(shape);
        }
        graphics.setColor(fill == Fill.ACCENT ? inks.accent() : inks.ink());
        graphics.setStroke(stroke(pen));
        graphics.draw(shape);
    }

    private @Nullable Color colour(Fill fill) {
        return switch (fill) {
            case NONE -> null;
            case TINT -> inks.tint();
            case ACCENT -> inks.softAccent();
            case SOLID -> inks.ink();
        };
    }

    private static BasicStroke stroke(Pen pen) {
        float width = (float) (pen.widthMm() * PIXELS_PER_PEN_MM);
        double[] dash = pen.dashMm();
        if (dash.length == 0) {
            return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        }
        float[] pattern = new float[dash.length];
        for (int i = 0; i < dash.length; i++) {
            pattern[i] = (float) (dash[i] * PIXELS_PER_PEN_MM / 2);
        }
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, pattern, 0);
    }

    /** A rule. */
    public void rule(Color colour, double x, double y, double width, double thick) {
        graphics.setColor(colour);
        graphics.fill(new Rectangle2D.Double(x, y, width, thick));
    }

    /** As a PNG file without a time in it. */
    public byte[] png() {
        graphics.dispose();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            // Not by way of a file.
            ImageIO.setUseCache(false);
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
