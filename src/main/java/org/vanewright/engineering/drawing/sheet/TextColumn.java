package org.vanewright.engineering.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Lettering;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;

/** Sets paragraphs one below the other in a column, down to a lowest line. */
public final class TextColumn {
    static final double HEADING_MM = 3.4;

    private static final double LINE_PER_CAP = 1.9;
    private static final double GAP_PER_CAP = 0.9;

    private final double left;
    private final double widthMm;
    private final double bottom;
    private final List<Shape> shapes = new ArrayList<>();
    private double top;

    /** All in mm; {@code bottom} may be minus infinity. */
    public TextColumn(double left, double top, double widthMm, double bottom) {
        this.left = left;
        this.top = top;
        this.widthMm = widthMm;
        this.bottom = bottom;
    }

    /**
     * A paragraph; the marker hangs to the left of its lines.
     *
     * @param spaceAboveMm kept free above, unless it comes first
     */
    public record Paragraph(String marker, String text, double capMm, double spaceAboveMm) {
        public static Paragraph plain(String text, double capMm) {
            return new Paragraph("", text, capMm, 0);
        }

        public static Paragraph item(String marker, String text, double capMm) {
            return new Paragraph(marker, text, capMm, 0);
        }

        public static Paragraph heading(String text) {
            return new Paragraph("", text, HEADING_MM, HEADING_MM);
        }
    }

    /** Sets as many whole paragraphs as have room and returns the others. */
    public List<Paragraph> set(List<Paragraph> paragraphs) {
        for (int i = 0; i < paragraphs.size(); i++) {
            if (!set(paragraphs.get(i))) {
                return paragraphs.subList(i, paragraphs.size());
            }
        }
        return List.of();
    }

    private boolean set(Paragraph paragraph) {
        double cap = paragraph.capMm();
        double indent = paragraph.marker().isEmpty() ? 0 : cap * 2.2;
        List<String> lines = wrap(paragraph.text(), cap, widthMm - indent);
        double first = shapes.isEmpty() ? top : top - paragraph.spaceAboveMm();
        double last = first - cap - (lines.size() - 1) * cap * LINE_PER_CAP;
        if (last < bottom - 1e-9) {
            return false;
        }
        for (int i = 0; i < lines.size(); i++) {
            double y = first - cap - i * cap * LINE_PER_CAP;
            if (i == 0 && indent > 0) {
                shapes.add(text(paragraph.marker(), left, y, cap));
            }
            shapes.add(text(lines.get(i), left + indent, y, cap));
        }
        top = last - cap * GAP_PER_CAP;
        return true;
    }

    /** Leaves room. */
    public void skip(double mm) {
        top -= mm;
    }

    /** Where the next paragraph begins. */
    public double top() {
        return top;
    }

    /** What has been set so far. */
    public List<Shape> shapes() {
        return shapes;
    }

    private static Shape text(String line, double x, double y, double cap) {
        return new Shape.Text(Layer.TEXT, line, new Point2(x, y), cap, 0, Shape.Align.START);
    }

    /** Breaks at blanks; a word wider than the column is broken where it must. */
    static List<String> wrap(String text, double capMm, double widthMm) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+", -1)) {
            String rest = word;
            if (!line.isEmpty() && Lettering.widthMm(line + " " + word, capMm) > widthMm) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (line.isEmpty() && rest.length() > 1 && Lettering.widthMm(rest, capMm) > widthMm) {
                int end = longestFit(rest, capMm, widthMm);
                lines.add(rest.substring(0, end));
                rest = rest.substring(end);
            }
            line.append(line.isEmpty() ? "" : " ").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    private static int longestFit(String word, double capMm, double widthMm) {
        int end = word.length() - 1;
        while (end > 1 && Lettering.widthMm(word.substring(0, end), capMm) > widthMm) {
            end--;
        }
        return Character.isHighSurrogate(word.charAt(end - 1)) && end > 1 ? end - 1 : end;
    }
}
