package org.vanewright.engineering.drawing;

import java.util.List;
import org.vanewright.engineering.geometry.Point2;

/**
 * Writes a drawing as DXF R12 (AC1009), the version every cutter reads: lines, polylines, circles and texts on the
 * layers CUT, FOLD, MARK and TEXT, in mm. R12 has no unit field, so a comment and a text below the drawing name the
 * unit. Fills are left out: a cutter follows lines.
 *
 * <p>Source: Autodesk, AutoCAD Release 12 Customization Manual (1992), chapter "Drawing Interchange Files", for group
 * codes.
 */
public final class DxfWriter {
    private static final int DECIMALS = 6;
    private static final double NOTE_HEIGHT_MM = 3;

    private final StringBuilder out = new StringBuilder(8192);

    private DxfWriter() {}

    /**
     * The whole file, ASCII only.
     *
     * @throws org.vanewright.engineering.input.InvalidInputException if the drawing is empty or not finite
     */
    public static String write(Drawing drawing) {
        return new DxfWriter().file(drawing);
    }

    private String file(Drawing drawing) {
        Bounds bounds = Bounds.of(drawing);
        tag(999, "Units: millimetres, scale 1:1");
        tag(999, AsciiText.of(drawing.title()));
        header(bounds);
        tables();
        begin("BLOCKS");
        end();
        begin("ENTITIES");
        drawing.shapes().forEach(this::entity);
        entity(new Shape.Text(
                Layer.TEXT,
                "Units: mm, scale 1:1",
                new Point2(bounds.minXMm(), bounds.minYMm() - 3 * NOTE_HEIGHT_MM),
                NOTE_HEIGHT_MM,
                0,
                Shape.Align.START));
        end();
        tag(0, "EOF");
        return out.toString();
    }

    private void header(Bounds bounds) {
        begin("HEADER");
        tag(9, "$ACADVER");
        tag(1, "AC1009");
        tag(9, "$EXTMIN");
        point(10, new Point2(bounds.minXMm(), bounds.minYMm()));
        tag(9, "$EXTMAX");
        point(10, new Point2(bounds.maxXMm(), bounds.maxYMm()));
        end();
    }

    private void tables() {
        begin("TABLES");
        table("LTYPE", 3);
        lineType("CONTINUOUS", "Solid line");
        lineType("DASHED", "Dashed __ __ __", Pen.DASHED.dashMm());
        lineType("CENTER", "Centre ____ _ ____", Pen.CENTRE.dashMm());
        tag(0, "ENDTAB");
        table("LAYER", Layer.values().length + 1);
        layer("0", 7);
        for (Layer layer : Layer.values()) {
            layer(layer.name(), colour(layer));
        }
        tag(0, "ENDTAB");
        table("STYLE", 1);
        style();
        tag(0, "ENDTAB");
        end();
    }

    private void table(String name, int entries) {
        tag(0, "TABLE");
        tag(2, name);
        tag(70, entries);
    }

    private void lineType(String name, String look, double... dashMm) {
        tag(0, "LTYPE");
        tag(2, name);
        tag(70, 0);
        tag(3, look);
        tag(72, 65);
        tag(73, dashMm.length);
        double total = 0;
        for (double length : dashMm) {
            total += length;
        }
        tag(40, total);
        for (int i = 0; i < dashMm.length; i++) {
            // gaps are negative
            tag(49, i % 2 == 0 ? dashMm[i] : -dashMm[i]);
        }
    }

    private void layer(String name, int colour) {
        tag(0, "LAYER");
        tag(2, name);
        tag(70, 0);
        tag(62, colour);
        tag(6, "CONTINUOUS");
    }

    private void style() {
        tag(0, "STYLE");
        tag(2, "STANDARD");
        tag(70, 0);
        tag(40, 0.0);
        tag(41, 1.0);
        tag(50, 0.0);
        tag(71, 0);
        tag(42, 2.5);
        tag(3, "txt");
        tag(4, "");
    }

    /** Indexed colours: red to cut, blue to fold, black or white to draw, grey to letter. */
    private static int colour(Layer layer) {
        return switch (layer) {
            case CUT -> 1;
            case FOLD -> 5;
            case MARK -> 7;
            case TEXT -> 8;
        };
    }

    private void entity(Shape shape) {
        if (shape instanceof Shape.Polyline line) {
            if (line.points().size() == 2 && !line.closed()) {
                start("LINE", line.layer(), line.pen());
                point(10, line.points().get(0));
                point(11, line.points().get(1));
            } else {
                polyline(line);
            }
        } else if (shape instanceof Shape.Circle circle) {
            start("CIRCLE", circle.layer(), circle.pen());
            point(10, circle.centre());
            tag(40, circle.radiusMm());
        } else {
            text((Shape.Text) shape);
        }
    }

    private void polyline(Shape.Polyline line) {
        start("POLYLINE", line.layer(), line.pen());
        tag(66, 1);
        point(10, Point2.ORIGIN);
        tag(70, line.closed() ? 1 : 0);
        for (Point2 p : openEnded(line)) {
            tag(0, "VERTEX");
            tag(8, line.layer().name());
            point(10, p);
        }
        tag(0, "SEQEND");
        tag(8, line.layer().name());
    }

    /** A closed polyline closes itself; a repeated first point would make a segment of no length. */
    private static List<Point2> openEnded(Shape.Polyline line) {
        List<Point2> points = line.points();
        int last = points.size() - 1;
        boolean repeats = line.closed() && last > 1 && points.get(0).equals(points.get(last));
        return repeats ? points.subList(0, last) : points;
    }

    private void text(Shape.Text text) {
        String line = AsciiText.of(text.text());
        if (line.isBlank()) {
            return;
        }
        tag(0, "TEXT");
        tag(8, text.layer().name());
        point(10, text.at());
        tag(40, text.heightMm());
        tag(1, line);
        tag(50, text.rotationDeg());
        if (text.align() != Shape.Align.START) {
            tag(72, text.align() == Shape.Align.MIDDLE ? 1 : 2);
            point(11, text.at());
        }
    }

    private void start(String type, Layer layer, Pen pen) {
        tag(0, type);
        tag(8, layer.name());
        if (pen == Pen.DASHED) {
            tag(6, "DASHED");
        } else if (pen == Pen.CENTRE) {
            tag(6, "CENTER");
        }
    }

    private void begin(String section) {
        tag(0, "SECTION");
        tag(2, section);
    }

    private void end() {
        tag(0, "ENDSEC");
    }

    private void point(int code, Point2 p) {
        tag(code, p.x());
        tag(code + 10, p.y());
        tag(code + 20, 0.0);
    }

    private void tag(int code, double value) {
        String digits = Numbers.of(value, DECIMALS);
        // a real number carries a decimal point in DXF
        tag(code, digits.indexOf('.') < 0 ? digits + ".0" : digits);
    }

    private void tag(int code, int value) {
        tag(code, Integer.toString(value));
    }

    private void tag(int code, String value) {
        String digits = Integer.toString(code);
        out.append(" ".repeat(Math.max(0, 3 - digits.length()))).append(digits).append('\n');
        out.append(value).append('\n');
    }
}
