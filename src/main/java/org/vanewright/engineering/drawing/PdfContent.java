package org.vanewright.engineering.drawing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.geometry.Point2;

/**
 * Builds the content stream of one page: path, colour and text operators of ISO 32000-1:2008, clause 8 and 9. Written
 * out here rather than through the library's stream class, since a template has tens of thousands of segments.
 */
final class PdfContent {
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final int DECIMALS = 3;
    /** Control arm of the cubic that follows a quarter circle within 0.03 % of its radius: 4/3·(√2 − 1). */
    private static final double QUARTER_ARM = 4.0 / 3 * (Math.sqrt(2) - 1);

    private static final char[] HEX = "0123456789ABCDEF".toCharArray();

    private final StringBuilder out = new StringBuilder(16_384);
    private final PDFont font;
    private final String fontName;
    private @Nullable Pen pen;

    PdfContent(PDFont font, String fontName) {
        this.font = font;
        this.fontName = fontName;
    }

    /** Ink left out: 0 is black, 1 is white. */
    static double grey(Fill fill) {
        return switch (fill) {
            case NONE -> 1;
            case TINT -> 0.95;
            case ACCENT -> 0.86;
            case SOLID -> 0;
        };
    }

    byte[] bytes() {
        return out.toString().getBytes(StandardCharsets.US_ASCII);
    }

    void part(PdfPage.Part part) throws IOException {
        Bounds clip = part.clip();
        out.append("q 1 j\n");
        pen = null;
        if (clip != null) {
            numbers(
                    clip.minXMm() * POINTS_PER_MM,
                    clip.minYMm() * POINTS_PER_MM,
                    clip.widthMm() * POINTS_PER_MM,
                    clip.heightMm() * POINTS_PER_MM);
            out.append("re W n\n");
        }
        for (Shape shape : part.shapes()) {
            draw(shape, part.transform());
        }
        out.append("Q\n");
    }

    private void draw(Shape shape, Similarity transform) throws IOException {
        if (shape instanceof Shape.Polyline line) {
            begin(line.pen(), line.fill());
            path(line.points(), transform);
            paint(line.closed(), line.closed() ? line.fill() : Fill.NONE);
        } else if (shape instanceof Shape.Circle circle) {
            begin(circle.pen(), circle.fill());
            circle(transform.apply(circle.centre()), circle.radiusMm() * transform.scale());
            paint(true, circle.fill());
        } else {
            text((Shape.Text) transform.apply(shape));
        }
    }

    private void begin(Pen next, Fill fill) {
        if (next != pen) {
            pen = next;
            numbers(next.widthMm() * POINTS_PER_MM);
            out.append("w [");
            for (double length : next.dashMm()) {
                numbers(length * POINTS_PER_MM);
            }
            out.append("] 0 d\n");
        }
        if (fill != Fill.NONE) {
            numbers(grey(fill));
            out.append("g\n");
        }
    }

    private void path(List<Point2> points, Similarity transform) {
        String operator = "m\n";
        for (Point2 p : points) {
            point(transform.apply(p));
            out.append(operator);
            operator = "l\n";
        }
    }

    private void circle(Point2 c, double r) {
        double arm = r * QUARTER_ARM;
        point(c.plus(new Point2(r, 0)));
        out.append("m\n");
        for (int quarter = 0; quarter < 4; quarter++) {
            double turn = quarter * Math.PI / 2;
            point(c.plus(new Point2(r, arm).rotated(turn)));
            point(c.plus(new Point2(arm, r).rotated(turn)));
            point(c.plus(new Point2(0, r).rotated(turn)));
            out.append("c\n");
        }
    }

    private void paint(boolean closed, Fill fill) {
        if (fill != Fill.NONE) {
            out.append("b\n");
        } else {
            out.append(closed ? "s\n" : "S\n");
        }
    }

    private void text(Shape.Text text) throws IOException {
        String line = Lettering.printable(text.text());
        double width = Lettering.widthMm(line, text.heightMm());
        double back = switch (text.align()) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
        };
        double turn = Math.toRadians(text.rotationDeg());
        Point2 start = text.at().minus(new Point2(back, 0).rotated(turn));
        out.append("BT 0 g /").append(fontName).append(' ');
        numbers(text.heightMm() / Lettering.CAP_HEIGHT_PER_EM * POINTS_PER_MM);
        out.append("Tf ");
        for (double entry : new double[] {Math.cos(turn), Math.sin(turn), -Math.sin(turn), Math.cos(turn)}) {
            Numbers.append(out, entry, 6);
            out.append(' ');
        }
        point(start);
        out.append("Tm <");
        line.codePoints().forEach(font::addToSubset);
        for (byte b : font.encode(line)) {
            out.append(HEX[(b >> 4) & 15]).append(HEX[b & 15]);
        }
        out.append("> Tj ET\n");
    }

    private void point(Point2 p) {
        numbers(p.x() * POINTS_PER_MM, p.y() * POINTS_PER_MM);
    }

    private void numbers(double... values) {
        for (double value : values) {
            Numbers.append(out, value, DECIMALS);
            out.append(' ');
        }
    }
}
