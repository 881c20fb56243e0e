package org.vanewright.engineering.drawing.sheet;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Lettering;
import org.vanewright.engineering.drawing.PdfDocumentSpec;
import org.vanewright.engineering.drawing.PdfPage;
import org.vanewright.engineering.drawing.PdfWriter;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.Similarity;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * One drawing on A4 landscape with its title and scale: 1:1 where it fits, else the largest reduction of ISO 5455:1979
 * that does.
 */
public final class SinglePagePdf {
    /** ISO 5455:1979, reduction scales. */
    private static final int[] REDUCTIONS = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000};

    private static final SheetSize SHEET = Paper.A4.portrait().turned();
    private static final double MARGIN_MM = 12;
    private static final double TITLE_MM = 4;
    private static final double TEXT_MM = 2;
    private static final double LINE_MM = 4;

    private SinglePagePdf() {}

    /**
     * One page; the same drawing gives the same bytes.
     *
     * @param footerLines revision, cautions and the like, lower left; lines too long for the page are wrapped
     * @throws InvalidInputException if the drawing is empty or not finite
     */
    public static byte[] write(Drawing drawing, List<String> footerLines, Instant created) {
        Bounds box = new SheetFrame(SHEET, MARGIN_MM, 0).printable();
        double footWidth = box.widthMm() - 75;
        List<String> foot = footerLines.stream()
                .flatMap(line -> TextColumn.wrap(line, TEXT_MM, footWidth).stream())
                .toList();
        double footHeight = Math.max(1, foot.size()) * LINE_MM + 4;
        Bounds window = new Bounds(box.minXMm(), box.minYMm() + footHeight, box.maxXMm(), box.maxYMm() - TITLE_MM - 6);
        Bounds content = Bounds.of(drawing);
        int reduction = reduction(content, window);
        double scale = 1.0 / reduction;
        Point2 shift = window.centre().minus(content.centre().times(scale));

        List<Shape> lettering = new ArrayList<>();
        Point2 title = new Point2(box.minXMm(), box.maxYMm() - TITLE_MM);
        String heading = Lettering.fit(drawing.title(), TITLE_MM, box.widthMm());
        lettering.add(new Shape.Text(Layer.TEXT, heading, title, TITLE_MM, 0, Shape.Align.START));
        for (int i = 0; i < foot.size(); i++) {
            Point2 at = new Point2(box.minXMm(), box.minYMm() + (foot.size() - 1 - i) * LINE_MM);
            lettering.add(new Shape.Text(Layer.TEXT, foot.get(i), at, TEXT_MM, 0, Shape.Align.START));
        }
        lettering.add(new Shape.Text(
                Layer.TEXT,
                "Scale 1:" + reduction + " on A4 · dimensions in mm",
                new Point2(box.maxXMm(), box.minYMm()),
                TEXT_MM,
                0,
                Shape.Align.END));
        PdfPage page = new PdfPage(
                SHEET.widthMm(),
                SHEET.heightMm(),
                List.of(
                        new PdfPage.Part(drawing.shapes(), new Similarity(scale, 0, shift), null),
                        PdfPage.Part.of(lettering)));
        return PdfWriter.write(new PdfDocumentSpec(drawing.title(), drawing.description(), created, List.of(page)));
    }

    private static int reduction(Bounds content, Bounds window) {
        for (int reduction : REDUCTIONS) {
            if (content.widthMm() <= window.widthMm() * reduction
                    && content.heightMm() <= window.heightMm() * reduction) {
                return reduction;
            }
        }
        throw new InvalidInputException(new FieldProblem(
                "shapes",
                Math.round(content.widthMm()) + " mm by " + Math.round(content.heightMm()) + " mm",
                "a drawing that fits on A4 at 1:10000"));
    }
}
