package org.vanewright.engineering.template;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.Similarity;
import org.vanewright.engineering.drawing.sheet.ScaleBars;
import org.vanewright.engineering.geometry.Point2;

/** All pieces of a wing on one drawing for a cutter, with scale bars in both directions and the cautions beside them. */
public final class CombinedDrawing {
    private static final double GAP_MM = 20;
    private static final double LETTER_MM = 3;
    private static final double LINE_MM = 5.5;
    private static final double HEADING_MM = 4.5;

    private CombinedDrawing() {}

    /**
     * Pieces one below the other, and under them a block that says what they are.
     *
     * @param heading such as the layout's name and revision
     * @param lines further lines: units, cautions
     */
    public static Drawing of(String heading, List<String> lines, List<TemplatePiece> pieces) {
        List<Shape> shapes = new ArrayList<>();
        double top = 0;
        for (TemplatePiece piece : pieces) {
            Bounds bounds = Bounds.of(piece.drawing());
            shapes.addAll(Similarity.shift(-bounds.minXMm(), top - bounds.maxYMm())
                    .apply(piece.drawing().shapes()));
            top -= bounds.heightMm() + GAP_MM;
        }
        shapes.addAll(block(new Point2(0, top), heading, lines));
        String description =
                "Full-size placement template, " + pieces.size() + (pieces.size() == 1 ? " piece" : " pieces")
                        + ", with scale bars of 100 mm and 4 inches in both directions.";
        return new Drawing(heading, description, shapes);
    }

    private static List<Shape> block(Point2 topLeft, String heading, List<String> lines) {
        Point2 corner = topLeft.minus(new Point2(0, ScaleBars.LENGTH_MM));
        List<Shape> shapes = new ArrayList<>(ScaleBars.vertical(corner));
        double left = ScaleBars.DEPTH_MM + 8;
        shapes.addAll(ScaleBars.horizontal(corner.plus(new Point2(left, 0))));
        double y = topLeft.y() - HEADING_MM;
        shapes.add(text(heading, new Point2(left, y), HEADING_MM));
        for (String line : lines) {
            y -= LINE_MM;
            shapes.add(text(line, new Point2(left, y), LETTER_MM));
        }
        return shapes;
    }

    private static Shape text(String words, Point2 at, double heightMm) {
        return new Shape.Text(Layer.TEXT, words, at, heightMm, 0, Shape.Align.START);
    }
}
