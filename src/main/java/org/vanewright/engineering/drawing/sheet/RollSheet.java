package org.vanewright.engineering.drawing.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.PdfPage;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.Similarity;
import org.vanewright.engineering.geometry.Point2;

/** A drawing in one piece on a roll, beside or below a block with scale bars and cautions. */
final class RollSheet {
    private static final double GAP_MM = 12;
    private static final double BLOCK_STEP_MM = 25;
    private static final double BLOCK_MAX_MM = 1500;

    private final Drawing drawing;
    private final Bounds content;
    private final SheetSpec spec;
    private final double rollMm;
    /** Header and footer together. */
    private final double framingMm;

    private RollSheet(Drawing drawing, SheetSpec spec) {
        this.drawing = drawing;
        this.spec = spec;
        content = Bounds.of(drawing).grown(1);
        rollMm = spec.requiredRollWidthMm();
        framingMm = SheetFrame.HEADER_MM + TileSheet.footer(spec).size() * SheetFrame.FOOTER_LINE_MM + 8;
    }

    /** One page, along or across the roll, whichever is shorter; none when the drawing does not fit in one piece. */
    static Optional<PdfPage> onePiece(Drawing drawing, SheetSpec spec) {
        RollSheet sheet = new RollSheet(drawing, spec);
        return Stream.of(sheet.lying(), sheet.standing())
                .flatMap(Optional::stream)
                .min(Comparator.comparingDouble(p -> p.widthMm() * p.heightMm()));
    }

    private Optional<PdfPage> lying() {
        double margins = 2 * spec.marginMm();
        Optional<Double> block = blockWidth(BLOCK_MAX_MM);
        double needed = Math.max(content.heightMm(), CheckBlock.HEIGHT_MM) + framingMm + margins;
        if (block.isEmpty() || needed > rollMm) {
            return Optional.empty();
        }
        double length = margins + block.get() + GAP_MM + content.widthMm();
        double left = spec.marginMm() + block.get() + GAP_MM;
        double top = rollMm - spec.marginMm() - SheetFrame.HEADER_MM - 4;
        return page(new SheetSize(length, rollMm), block.get(), new Point2(left, top - content.heightMm()));
    }

    private Optional<PdfPage> standing() {
        double margins = 2 * spec.marginMm();
        Optional<Double> block = blockWidth(rollMm - margins);
        if (block.isEmpty() || content.widthMm() + margins > rollMm) {
            return Optional.empty();
        }
        double length = margins + framingMm + CheckBlock.HEIGHT_MM + GAP_MM + content.heightMm();
        double foot = spec.marginMm() + framingMm - SheetFrame.HEADER_MM - 4;
        return page(new SheetSize(rollMm, length), block.get(), new Point2(spec.marginMm(), foot));
    }

    private Optional<Double> blockWidth(double limitMm) {
        for (double width = CheckBlock.MIN_WIDTH_MM; width <= limitMm; width += BLOCK_STEP_MM) {
            if (CheckBlock.at(Point2.ORIGIN, width, spec.cautions()).rest().isEmpty()) {
                return Optional.of(width);
            }
        }
        return Optional.empty();
    }

    /** @param corner where the lower left corner of the drawing goes */
    private Optional<PdfPage> page(SheetSize size, double blockMm, Point2 corner) {
        if (Math.max(size.widthMm(), size.heightMm()) > PdfPage.MAX_SIDE_MM) {
            return Optional.empty();
        }
        Bounds box = new SheetFrame(size, spec.marginMm(), 0).printable();
        List<Shape> shapes = new ArrayList<>();
        TileSheet.header(shapes, box, "", spec.headerLine(), 1, 1);
        TileSheet.footer(shapes, box, TileSheet.footer(spec));
        Point2 block = new Point2(box.minXMm(), box.maxYMm() - SheetFrame.HEADER_MM - 4 - CheckBlock.HEIGHT_MM);
        shapes.addAll(CheckBlock.at(block, blockMm, spec.cautions()).shapes());
        Similarity place = Similarity.shift(corner.x() - content.minXMm(), corner.y() - content.minYMm());
        return Optional.of(new PdfPage(
                size.widthMm(),
                size.heightMm(),
                List.of(new PdfPage.Part(drawing.shapes(), place, null), PdfPage.Part.of(shapes))));
    }
}
