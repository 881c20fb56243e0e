package org.vanewright.engineering.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.sheet.TextColumn.Paragraph;
import org.vanewright.engineering.geometry.Point2;

/**
 * Scale bars in both directions along the left and lower edges of a box, and inside it what to check and the cautions.
 *
 * @param shapes the block
 * @param rest paragraphs that found no room
 */
record CheckBlock(List<Shape> shapes, List<Paragraph> rest) {
    /** The bars, no taller. */
    static final double HEIGHT_MM = ScaleBars.LENGTH_MM;

    static final double MIN_WIDTH_MM = 170;

    private static final double INSET_MM = ScaleBars.DEPTH_MM + 7;
    private static final double TEXT_MM = 2.3;

    /** @param corner lower left corner */
    static CheckBlock at(Point2 corner, double widthMm, List<String> cautions) {
        List<Shape> shapes = new ArrayList<>(ScaleBars.vertical(corner));
        shapes.addAll(ScaleBars.horizontal(corner.plus(new Point2(INSET_MM, 0))));
        TextColumn column = new TextColumn(
                corner.x() + INSET_MM, corner.y() + HEIGHT_MM, widthMm - INSET_MM, corner.y() + ScaleBars.DEPTH_MM + 5);
        List<Paragraph> rest = column.set(paragraphs(cautions));
        shapes.addAll(column.shapes());
        return new CheckBlock(shapes, rest);
    }

    private static List<Paragraph> paragraphs(List<String> cautions) {
        List<Paragraph> paragraphs = new ArrayList<>();
        paragraphs.add(Paragraph.heading("Measure before use"));
        paragraphs.add(Paragraph.plain(
                "Lay a steel rule on the bars, in both directions. If 100 mm is off by more than 0.5 mm, do not use"
                        + " the print: print again at 100 %, with no scaling to the page.",
                TEXT_MM));
        if (!cautions.isEmpty()) {
            paragraphs.add(Paragraph.heading("Cautions"));
        }
        cautions.forEach(c -> paragraphs.add(Paragraph.item("–", c, TEXT_MM)));
        return paragraphs;
    }
}
