package org.vanewright.engineering.drawing;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.vanewright.engineering.geometry.Point2;

/** Writes a drawing as SVG 1.1, either as a file at true scale or as an element of a page. */
public final class SvgWriter {
    /** Room around the drawing for half a pen width and more. */
    private static final double EDGE_MM = 1;

    private static final int DECIMALS = 4;
    private static final Pattern NAME = Pattern.compile("[A-Za-z][A-Za-z0-9_-]*");
    private static final Pattern CLASSES = Pattern.compile("[A-Za-z][A-Za-z0-9_ -]*");

    private final StringBuilder out = new StringBuilder(4096);
    private final boolean inline;

    private SvgWriter(boolean inline) {
        this.inline = inline;
    }

    /**
     * A file: width, height and view box in mm, so that it prints and cuts at true scale; one group per layer with the
     * layer's name as id. Tints are see-through, so regrouping by layer hides nothing.
     *
     * @throws org.vanewright.engineering.input.InvalidInputException if the drawing is empty or not finite
     */
    public static String write(Drawing drawing) {
        SvgWriter writer = new SvgWriter(false);
        writer.out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        Bounds view = Bounds.of(drawing).grown(EDGE_MM);
        writer.out
                .append("<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\"")
                .append(attribute("width", Numbers.of(view.widthMm(), DECIMALS) + "mm"))
                .append(attribute("height", Numbers.of(view.heightMm(), DECIMALS) + "mm"));
        writer.head(drawing, view, "drawing");
        Map<Layer, StringBuilder> groups = new EnumMap<>(Layer.class);
        drawing.shapes().forEach(s -> writer.shape(groups.computeIfAbsent(s.layer(), l -> new StringBuilder()), s));
        groups.forEach((layer, body) -> writer.out
                .append("<g")
                .append(attribute("id", name(layer)))
                .append(attribute("class", "layer-" + name(layer)))
                .append(" stroke=\"")
                .append(ink(layer))
                .append("\" fill=\"none\">\n")
                .append(body)
                .append("</g>\n"));
        return writer.out.append("</svg>\n").toString();
    }

    /**
     * An element for a page: as wide as its container, colours and pens left to the page's style sheet through the
     * classes {@code layer-cut|fold|mark|text}, {@code pen-fine|thin|thick|dashed|centre},
     * {@code fill-none|tint|accent|solid} and {@code lettering}. Shapes keep their order. No style attribute, no
     * colour.
     *
     * @param cssClass class or classes of the {@code svg} element
     * @param idPrefix makes the ids of title and description unique on the page; a letter, then letters, digits,
     *     hyphens, underscores
     * @throws IllegalArgumentException if a class or the prefix is not such a name
     * @throws org.vanewright.engineering.input.InvalidInputException if the drawing is empty or not finite
     */
    public static String inline(Drawing drawing, String cssClass, String idPrefix) {
        require(CLASSES, cssClass);
        require(NAME, idPrefix);
        SvgWriter writer = new SvgWriter(true);
        writer.out
                .append("<svg xmlns=\"http://www.w3.org/2000/svg\"")
                .append(attribute("class", cssClass))
                .append(" width=\"100%\"");
        writer.head(drawing, Bounds.of(drawing).grown(EDGE_MM), idPrefix);
        drawing.shapes().forEach(s -> writer.shape(writer.out, s));
        return writer.out.append("</svg>\n").toString();
    }

    private void head(Drawing drawing, Bounds view, String prefix) {
        out.append(attribute(
                        "viewBox",
                        number(view.minXMm()) + " " + number(-view.maxYMm()) + " " + number(view.widthMm()) + " "
                                + number(view.heightMm())))
                .append(" role=\"img\"")
                .append(attribute("aria-labelledby", prefix + "-title " + prefix + "-desc"))
                .append(">\n<title")
                .append(attribute("id", prefix + "-title"))
                .append('>')
                .append(escape(drawing.title()))
                .append("</title>\n<desc")
                .append(attribute("id", prefix + "-desc"))
                .append('>')
                .append(escape(drawing.description()))
                .append("</desc>\n");
    }

    private void shape(StringBuilder to, Shape shape) {
        if (shape instanceof Shape.Polyline line) {
            to.append("<path");
            look(to, line.layer(), line.pen(), line.closed() ? line.fill() : Fill.NONE);
            to.append(" d=\"");
            path(to, line.points());
            to.append(line.closed() ? "Z\"/>\n" : "\"/>\n");
        } else if (shape instanceof Shape.Circle circle) {
            to.append("<circle");
            look(to, circle.layer(), circle.pen(), circle.fill());
            to.append(attribute("cx", number(circle.centre().x())))
                    .append(attribute("cy", number(-circle.centre().y())))
                    .append(attribute("r", number(circle.radiusMm())))
                    .append("/>\n");
        } else {
            text(to, (Shape.Text) shape);
        }
    }

    private void look(StringBuilder to, Layer layer, Pen pen, Fill fill) {
        if (inline) {
            to.append(attribute("class", "layer-" + name(layer) + " pen-" + name(pen) + " fill-" + name(fill)))
                    .append(" vector-effect=\"non-scaling-stroke\"");
            return;
        }
        to.append(attribute("stroke-width", number(pen.widthMm())));
        double[] dash = pen.dashMm();
        if (dash.length > 0) {
            StringBuilder lengths = new StringBuilder();
            for (double d : dash) {
                lengths.append(lengths.isEmpty() ? "" : " ").append(number(d));
            }
            to.append(attribute("stroke-dasharray", lengths.toString()));
        }
        if (fill != Fill.NONE) {
            to.append(" fill=\"#000\"");
            if (fill != Fill.SOLID) {
                to.append(attribute("fill-opacity", number(1 - PdfContent.grey(fill))));
            }
        }
    }

    private void text(StringBuilder to, Shape.Text text) {
        String x = number(text.at().x());
        String y = number(-text.at().y());
        to.append("<text").append(attribute("x", x)).append(attribute("y", y));
        if (inline) {
            to.append(attribute("class", "layer-" + name(text.layer()) + " lettering"));
        } else {
            to.append(" fill=\"#000\" stroke=\"none\" font-family=\"Liberation Sans, Arial, Helvetica, sans-serif\"");
            // keeps the room the drawing planned for it where another typeface stands in
            to.append(attribute("textLength", number(Lettering.widthMm(text.text(), text.heightMm()))))
                    .append(" lengthAdjust=\"spacingAndGlyphs\"");
        }
        to.append(attribute("font-size", number(text.heightMm() / Lettering.CAP_HEIGHT_PER_EM)));
        if (text.align() != Shape.Align.START) {
            to.append(attribute("text-anchor", name(text.align())));
        }
        if (text.rotationDeg() != 0) {
            to.append(attribute("transform", "rotate(" + number(-text.rotationDeg()) + " " + x + " " + y + ")"));
        }
        to.append('>').append(escape(text.text())).append("</text>\n");
    }

    private static void path(StringBuilder to, List<Point2> points) {
        char command = 'M';
        for (Point2 p : points) {
            to.append(command);
            Numbers.append(to, p.x(), DECIMALS);
            to.append(' ');
            Numbers.append(to, -p.y(), DECIMALS);
            command = 'L';
        }
    }

    /** Colours that cutter software tells apart; the layer ids say the same in words. */
    private static String ink(Layer layer) {
        return switch (layer) {
            case CUT -> "#c00000";
            case FOLD -> "#0050b0";
            case MARK, TEXT -> "#000000";
        };
    }

    /** Text for an element or attribute; characters XML 1.0 does not allow are left out. */
    static String escape(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\n', '\r', '\t' -> escaped.append(' ');
                default -> {
                    boolean allowed = c >= ' ' && !(c >= 0xD800 && c <= 0xDFFF) && c != 0xFFFE && c != 0xFFFF;
                    if (allowed && !Character.isISOControl(c)) {
                        escaped.appendCodePoint(c);
                    }
                }
            }
        });
        return escaped.toString();
    }

    private static String attribute(String name, String value) {
        return " " + name + "=\"" + value + "\"";
    }

    private static String number(double value) {
        return Numbers.of(value, DECIMALS);
    }

    private static String name(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    private static void require(Pattern pattern, String value) {
        if (!pattern.matcher(value).matches()) {
            throw new IllegalArgumentException("not a name: " + value);
        }
    }
}
