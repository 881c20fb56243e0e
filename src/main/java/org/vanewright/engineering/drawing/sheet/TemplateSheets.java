package org.vanewright.engineering.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.PdfDocumentSpec;
import org.vanewright.engineering.drawing.PdfPage;
import org.vanewright.engineering.drawing.PdfWriter;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * A drawing at true scale as a printable PDF. On sheets: a cover with map, scale bars, cautions and how to lay the
 * sheets together, then one page a tile. On a roll: one page; only a drawing longer than the longest PDF page (5,080
 * mm) or wider than the roll is split, then with a cover as on sheets.
 */
public final class TemplateSheets {
    /** In one file; nobody prints and lays together more. */
    static final int MAX_SHEETS = 800;

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
     * @throws org.vanewright.engineering.input.InvalidInputException as for a single drawing, or for more than 800
     *     sheets together
     * @throws IllegalArgumentException without a job
     */
    public static byte[] pdf(List<Job> jobs) {
        if (jobs.isEmpty()) {
            throw new IllegalArgumentException("nothing to print");
        }
        List<PdfPage> pages = new ArrayList<>();
        planned(jobs).forEach(planned -> pages.addAll(pages(planned)));
        SheetSpec first = jobs.get(0).spec();
        return PdfWriter.write(
                new PdfDocumentSpec(first.headerLine(), jobs.get(0).drawing().description(), first.created(), pages));
    }

    /** Pages of one piece on a roll, or how it is spread over sheets. */
    private record Planned(Job job, Optional<PdfPage> onePiece, Optional<TilePlan> plan) {
        static Planned of(Job job) {
            Optional<PdfPage> one =
                    job.spec().paper().isRoll() ? RollSheet.onePiece(job.drawing(), job.spec()) : Optional.empty();
            return new Planned(
                    job,
                    one,
                    one.isPresent() ? Optional.empty() : Optional.of(TemplateSheets.plan(job.drawing(), job.spec())));
        }

        int sheets() {
            return plan.map(p -> p.tiles().size()).orElse(1);
        }
    }

    /** Counts the sheets before any is drawn. */
    private static List<Planned> planned(List<Job> jobs) {
        List<Planned> planned = new ArrayList<>();
        int sheets = 0;
        for (Job job : jobs) {
            Planned next = Planned.of(job);
            planned.add(next);
            sheets += next.sheets();
            if (sheets > MAX_SHEETS) {
                throw new InvalidInputException(new FieldProblem(
                        "paper",
                        jobs.size() + " pieces on more than " + MAX_SHEETS + " sheets",
                        "at most " + MAX_SHEETS
                                + " sheets in one file; print one row at a time or choose larger paper"));
            }
        }
        return planned;
    }

    private static List<PdfPage> pages(Drawing drawing, SheetSpec spec) {
        return pages(Planned.of(new Job(drawing, spec)));
    }

    private static List<PdfPage> pages(Planned planned) {
        if (planned.plan().isEmpty()) {
            return planned.onePiece().stream().toList();
        }
        TilePlan plan = planned.plan().get();
        SheetSpec spec = planned.job().spec();
        List<PdfPage> pages =
                new ArrayList<>(CoverSheet.pages(plan, planned.job().drawing(), spec));
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
