package org.vanewright.engineering.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.PdfPage;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.sheet.TextColumn.Paragraph;
import org.vanewright.engineering.geometry.Point2;

/** First sheet of a tiled drawing: the map, how to lay the sheets together, the scale bars, the cautions. */
final class CoverSheet {
    private static final double TEXT_MM = 2.3;
    private static final double GAP_MM = 10;
    private static final double MAP_MAX_MM = 80;

    private CoverSheet() {}

    /** The cover; further pages only where the cautions are too long for it. */
    static List<PdfPage> pages(TilePlan plan, Drawing drawing, SheetSpec spec) {
        SheetSize size =
                spec.paper().isRoll() ? Paper.A4.portrait() : spec.paper().portrait();
        Bounds box = new SheetFrame(size, spec.marginMm(), 0).printable();
        List<String> footer = TileSheet.footer(spec);
        double lowest = box.minYMm() + footer.size() * SheetFrame.FOOTER_LINE_MM + GAP_MM / 2;

        List<Shape> shapes = new ArrayList<>();
        double top = guide(shapes, box, lowest + CheckBlock.HEIGHT_MM + GAP_MM, plan, drawing, spec);
        Point2 corner = new Point2(box.minXMm(), Math.max(lowest, top - GAP_MM - CheckBlock.HEIGHT_MM));
        CheckBlock check = CheckBlock.at(corner, box.widthMm(), spec.cautions());
        shapes.addAll(check.shapes());
        List<List<Shape>> covers = new ArrayList<>();
        covers.add(shapes);
        covers.addAll(continued(box, lowest, check.rest()));

        List<PdfPage> sheets = new ArrayList<>();
        for (List<Shape> cover : covers) {
            int page = sheets.size() + 1;
            TileSheet.header(
                    cover, box, "", spec.headerLine(), page, plan.tiles().size() + covers.size());
            TileSheet.footer(cover, box, footer);
            sheets.add(new PdfPage(size.widthMm(), size.heightMm(), List.of(PdfPage.Part.of(cover))));
        }
        return sheets;
    }

    private static List<List<Shape>> continued(Bounds box, double lowest, List<Paragraph> rest) {
        List<List<Shape>> pages = new ArrayList<>();
        List<Paragraph> left = rest;
        while (!left.isEmpty()) {
            TextColumn column =
                    new TextColumn(box.minXMm(), box.maxYMm() - SheetFrame.HEADER_MM - 4, box.widthMm(), lowest);
            column.set(List.of(Paragraph.heading("Cautions, continued")));
            left = column.set(left);
            pages.add(column.shapes());
        }
        return pages;
    }

    /**
     * Summary, map and steps between the header and {@code bottom}; the map takes what the text leaves.
     *
     * @return where the text ends
     */
    private static double guide(
            List<Shape> to, Bounds box, double bottom, TilePlan plan, Drawing drawing, SheetSpec spec) {
        List<Paragraph> steps = steps(plan, drawing);
        TextColumn measured = new TextColumn(0, 0, box.widthMm(), Double.NEGATIVE_INFINITY);
        measured.set(steps);
        double stepsHeight = -measured.top();

        TextColumn column = new TextColumn(
                box.minXMm(), box.maxYMm() - SheetFrame.HEADER_MM - 2, box.widthMm(), Double.NEGATIVE_INFINITY);
        column.set(List.of(Paragraph.plain(summary(plan, spec), TEXT_MM)));
        column.skip(2);
        double room = Math.min(MAP_MAX_MM, column.top() - stepsHeight - GAP_MM - bottom);
        to.addAll(TileMap.shapes(plan, drawing, new Point2(box.minXMm(), column.top()), box.widthMm(), room));
        column.skip(TileMap.heightMm(plan, box.widthMm(), room) + GAP_MM / 2);
        column.set(steps);
        to.addAll(column.shapes());
        return column.top();
    }

    private static String summary(TilePlan plan, SheetSpec spec) {
        int sheets = plan.tiles().size();
        SheetSize size = plan.sheet();
        String paper = spec.paper().isRoll()
                ? String.format(Locale.ROOT, "a roll, each %.0f mm by %.0f mm", size.widthMm(), size.heightMm())
                : spec.paper().label() + (size.widthMm() > size.heightMm() ? " landscape" : " portrait");
        if (sheets == 1) {
            return "The drawing follows on one sheet of " + paper + ".";
        }
        String gaps = sheets < plan.rows() * plan.columns()
                ? " A cell without a frame has nothing on it and is not printed."
                : "";
        return sheets + " sheets of " + paper + ". A sheet is named by its row letter and column number: A1 is at the"
                + " upper left." + gaps;
    }

    private static List<Paragraph> steps(TilePlan plan, Drawing drawing) {
        List<String> lines = new ArrayList<>();
        if (plan.tiles().size() > 1) {
            lines.add("Check the scale bars on this sheet, and on every sheet that has them.");
            lines.add("Begin with " + plan.tiles().get(0).name() + " and go along each row. Cut a sheet on its dashed"
                    + " lines, at the left and above.");
            lines.add("Lay the cut edge on the fine line of its neighbour so that the crosses meet and run on straight;"
                    + " tape it down.");
            Bounds size = lines(drawing);
            lines.add(String.format(
                    Locale.ROOT,
                    "Measure the whole: the drawing is %.1f mm wide and %.1f mm high.",
                    size.widthMm(),
                    size.heightMm()));
        }
        List<Paragraph> steps = new ArrayList<>();
        if (!lines.isEmpty()) {
            steps.add(Paragraph.heading("Laying the sheets together"));
        }
        for (int i = 0; i < lines.size(); i++) {
            steps.add(Paragraph.item((i + 1) + ".", lines.get(i), TEXT_MM));
        }
        return steps;
    }

    /** Around all that a rule can be laid on: lettering left out, unless there is nothing else. */
    private static Bounds lines(Drawing drawing) {
        List<Shape> shapes = drawing.shapes().stream()
                .filter(s -> !(s instanceof Shape.Text))
                .toList();
        return Bounds.of(shapes.isEmpty() ? drawing.shapes() : shapes);
    }
}
