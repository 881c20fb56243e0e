package org.vanewright.engineering.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Lettering;
import org.vanewright.engineering.drawing.PdfPage;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.sheet.TextColumn.Paragraph;
import org.vanewright.engineering.geometry.Point2;

/** Paragraphs, tables and small drawings one below the other, over as many pages as they take, each with a footer. */
public final class FlowingSheet {
    public static final double MARGIN_MM = 14;

    private static final double FOOTER_CAP_MM = 1.8;
    private static final double FOOTER_LINE_MM = 3.6;
    private static final double CELL_CAP_MM = 2.1;
    private static final double CELL_LINE_MM = 4;
    private static final double CELL_PAD_MM = 1;
    private static final double HEAD_TO_BODY_MM = 22;

    private final SheetSize size;
    private final List<String> footer;
    private final List<List<Shape>> pages = new ArrayList<>();
    private TextColumn column;

    /** @param footer lines at the foot of every page; the number of the page is added to the first */
    public FlowingSheet(SheetSize size, List<String> footer) {
        this.size = size;
        this.footer = List.copyOf(footer);
        this.column = nextPage();
    }

    /**
     * A table to read or to write into.
     *
     * @param heads of the columns
     * @param shares of the width; as many as heads
     * @param rows text of every cell, empty to be filled in
     * @param leastRowMm height of a row at least
     */
    public record Table(List<String> heads, List<Double> shares, List<List<String>> rows, double leastRowMm) {
        public Table {
            heads = List.copyOf(heads);
            shares = List.copyOf(shares);
            rows = rows.stream().map(List::copyOf).toList();
            int columns = heads.size();
            if (shares.size() != columns || rows.stream().anyMatch(r -> r.size() != columns)) {
                throw new IllegalArgumentException("a table's rows and shares must match its heads");
            }
        }
    }

    public double widthMm() {
        return size.widthMm() - 2 * MARGIN_MM;
    }

    private double bottomMm() {
        return MARGIN_MM + footer.size() * FOOTER_LINE_MM;
    }

    private TextColumn nextPage() {
        pages.add(new ArrayList<>());
        return new TextColumn(MARGIN_MM, size.heightMm() - MARGIN_MM, widthMm(), bottomMm());
    }

    private void breakPage() {
        pages.get(pages.size() - 1).addAll(column.shapes());
        column = nextPage();
    }

    private double room() {
        return column.top() - bottomMm();
    }

    /** Goes on with a new page unless there is so much room left, so that what follows stays together. */
    public void need(double mm) {
        if (room() < mm) {
            breakPage();
        }
    }

    /** A heading, kept together with the beginning of what follows. */
    public void heading(String text) {
        need(HEAD_TO_BODY_MM);
        set(List.of(Paragraph.heading(text)));
        column.skip(0.8);
    }

    public void set(List<Paragraph> paragraphs) {
        List<Paragraph> rest = column.set(paragraphs);
        while (!rest.isEmpty()) {
            breakPage();
            int before = rest.size();
            rest = column.set(rest);
            if (rest.size() == before) {
                throw new IllegalArgumentException("a paragraph is taller than a page");
            }
        }
    }

    /** The heads come again on every page that the table goes on to. */
    public void table(Table table) {
        column.skip(1);
        double head = rowHeight(table, table.heads(), 0);
        need(head + 2 * Math.max(table.leastRowMm(), CELL_LINE_MM));
        row(table, table.heads(), 0, Pen.THICK);
        for (List<String> cells : table.rows()) {
            double height = rowHeight(table, cells, table.leastRowMm());
            if (room() < height) {
                breakPage();
                row(table, table.heads(), 0, Pen.THICK);
            }
            row(table, cells, table.leastRowMm(), Pen.THIN);
        }
        column.skip(3);
    }

    private double[] widths(Table table) {
        double sum = table.shares().stream().mapToDouble(Double::doubleValue).sum();
        return table.shares().stream().mapToDouble(s -> widthMm() * s / sum).toArray();
    }

    private double rowHeight(Table table, List<String> cells, double least) {
        double[] widths = widths(table);
        int lines = 1;
        for (int i = 0; i < cells.size(); i++) {
            lines = Math.max(
                    lines,
                    TextColumn.wrap(cells.get(i), CELL_CAP_MM, widths[i] - 2 * CELL_PAD_MM)
                            .size());
        }
        return Math.max(least, lines * CELL_LINE_MM + CELL_PAD_MM);
    }

    private void row(Table table, List<String> cells, double least, Pen below) {
        double[] widths = widths(table);
        double height = rowHeight(table, cells, least);
        double top = column.top();
        double bottom = top - height;
        List<Shape> to = column.shapes();
        double x = MARGIN_MM;
        to.add(Shape.line(Layer.MARK, Pen.THIN, new Point2(x, top), new Point2(x + widthMm(), top)));
        to.add(Shape.line(Layer.MARK, below, new Point2(x, bottom), new Point2(x + widthMm(), bottom)));
        for (int i = 0; i < cells.size(); i++) {
            to.add(Shape.line(Layer.MARK, Pen.THIN, new Point2(x, top), new Point2(x, bottom)));
            double y = top - CELL_PAD_MM - CELL_CAP_MM;
            for (String line : TextColumn.wrap(cells.get(i), CELL_CAP_MM, widths[i] - 2 * CELL_PAD_MM)) {
                if (!line.isEmpty()) {
                    to.add(new Shape.Text(
                            Layer.TEXT, line, new Point2(x + CELL_PAD_MM, y), CELL_CAP_MM, 0, Shape.Align.START));
                }
                y -= CELL_LINE_MM;
            }
            x += widths[i];
        }
        to.add(Shape.line(Layer.MARK, Pen.THIN, new Point2(x, top), new Point2(x, bottom)));
        column.skip(height);
    }

    /** Makes shapes inside a box of a width and height, its lower left corner at a place. */
    public interface Figure {
        List<Shape> at(Point2 corner, double widthMm, double heightMm);
    }

    /**
     * Small drawings side by side, each with its words below.
     *
     * @param captions one for each figure
     */
    public void figures(List<Figure> figures, List<String> captions, double heightMm, double textMm) {
        double gap = 5;
        double width = (widthMm() - gap * (figures.size() - 1)) / figures.size();
        double words = captions.stream()
                .mapToDouble(c -> TextColumn.wrap(c, textMm, width).size() * textMm * 1.9)
                .max()
                .orElse(0);
        need(heightMm + words + 6);
        double bottom = column.top() - heightMm;
        for (int i = 0; i < figures.size(); i++) {
            double x = MARGIN_MM + i * (width + gap);
            column.shapes().addAll(figures.get(i).at(new Point2(x, bottom), width, heightMm));
            TextColumn below = new TextColumn(x, bottom - 2, width, Double.NEGATIVE_INFINITY);
            below.set(List.of(Paragraph.plain(captions.get(i), textMm)));
            column.shapes().addAll(below.shapes());
        }
        column.skip(heightMm + words + 6);
    }

    /** What has been set; to be called once, at the end. */
    public List<PdfPage> pages() {
        pages.get(pages.size() - 1).addAll(column.shapes());
        List<PdfPage> made = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            List<Shape> shapes = new ArrayList<>(pages.get(i));
            for (int line = 0; line < footer.size(); line++) {
                String text = footer.get(line) + (line == 0 ? " · page " + (i + 1) + " of " + pages.size() : "");
                shapes.addAll(footerLine(text, line));
            }
            made.add(new PdfPage(size.widthMm(), size.heightMm(), List.of(PdfPage.Part.of(shapes))));
        }
        return made;
    }

    private List<Shape> footerLine(String text, int line) {
        double y = bottomMm() - 4 - line * FOOTER_LINE_MM;
        String fitted = Lettering.fit(text, FOOTER_CAP_MM, widthMm());
        return List.of(
                new Shape.Text(Layer.TEXT, fitted, new Point2(MARGIN_MM, y), FOOTER_CAP_MM, 0, Shape.Align.START));
    }
}
