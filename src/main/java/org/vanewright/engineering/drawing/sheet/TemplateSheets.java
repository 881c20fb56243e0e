package org.vanewright.engineering.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.PdfDocumentSpec;
import org.vanewright.engineering.drawing.PdfPage;
import org.vanewright.engineering.drawing.PdfWriter;

/**
 * A drawing at true scale as a printable PDF. On sheets: a cover with map, scale bars, cautions and how to lay the
 * sheets together, then one page a tile. On a roll: one page; only a drawing longer than the longest PDF page (5,080
 * mm) or wider than the roll is split, then with a cover as on sheets.
 */
public final class TemplateSheets {
    private TemplateSheets() {}

    /**
     * The same drawing and specification give the same bytes.
     *
     * @throws org.vanewright.engineering.input.InvalidInputException if the drawing is empty, not finite, or takes more
     *     than 400 sheets
     */
    public static byte[] pdf(Drawing drawing, SheetSpec spec) {
        return PdfWriter.write(
                new PdfDocumentSpec(spec.headerLine(), drawing.description(), spec.created(), pages(drawing, spec)));
    }

    /** One drawing and how it goes onto paper. */
    public record Job(Drawing drawing, SheetSpec spec) {}

    /**
     * Several drawings in one file, each on sheets of its own.
     *
     * @throws IllegalArgumentException without a job
     */
    public static byte[] pdf(List<Job> jobs) {
        if (jobs.isEmpty()) {
            throw new IllegalArgumentException("nothing to print");
        }
        List<PdfPage> pages = new ArrayList<>();
        jobs.forEach(job -> pages.addAll(pages(job.drawing(), job.spec())));
        SheetSpec first = jobs.get(0).spec();
        return PdfWriter.write(
                new PdfDocumentSpec(first.headerLine(), jobs.get(0).drawing().description(), first.created(), pages));
    }

    private static List<PdfPage> pages(Drawing drawing, SheetSpec spec) {
        if (spec.paper().isRoll()) {
            Optional<PdfPage> one = RollSheet.onePiece(drawing, spec);
            if (one.isPresent()) {
                return List.of(one.get());
            }
        }
        TilePlan plan = plan(drawing, spec);
        List<PdfPage> pages = new ArrayList<>(CoverSheet.pages(plan, drawing, spec));
        int covers = pages.size();
        for (Tile tile : plan.tiles()) {
            pages.add(TileSheet.page(
                    plan, tile, spec, pages.size() + 1, plan.tiles().size() + covers));
        }
        return pages;
    }

    /** How the drawing is spread over sheets, or over lengths of a roll where one piece is not enough. */
    public static TilePlan plan(Drawing drawing, SheetSpec spec) {
        int footerLines = TileSheet.footer(spec).size();
        return spec.paper().isRoll()
                ? Tiler.roll(drawing, spec.requiredRollWidthMm(), spec.marginMm(), spec.overlapMm(), footerLines)
                : Tiler.tile(drawing, spec.paper(), spec.marginMm(), spec.overlapMm(), footerLines);
    }
}
