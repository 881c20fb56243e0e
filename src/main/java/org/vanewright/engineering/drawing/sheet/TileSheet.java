package org.vanewright.engineering.drawing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Lettering;
import org.vanewright.engineering.drawing.PdfPage;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;

/** One sheet of a tiled drawing: its part of the drawing, the seams, and who joins where. */
final class TileSheet {
    private static final double NAME_MM = 5;
    private static final double TITLE_MM = 2.8;
    private static final double PAGE_MM = 2.4;
    private static final double BAND_TEXT_MM = 2;
    private static final double FOOTER_TEXT_MM = 1.8;

    private TileSheet() {}

    static PdfPage page(TilePlan plan, Tile tile, SheetSpec spec, int page, int pages) {
        SheetFrame frame =
                new SheetFrame(plan.sheet(), plan.marginMm(), footer(spec).size());
        List<Shape> around = new ArrayList<>();
        header(around, frame.printable(), tile.name(), spec.headerLine(), page, pages);
        joins(around, tile);
        footer(around, frame.printable(), footer(spec));
        List<Shape> marks = new ArrayList<>(RegistrationMarks.shapes(plan, tile));
        marks.addAll(scaleBars(plan, tile));
        return new PdfPage(
                plan.sheet().widthMm(),
                plan.sheet().heightMm(),
                List.of(
                        new PdfPage.Part(tile.shapes(), tile.toSheet(), tile.frame()),
                        new PdfPage.Part(marks, tile.toSheet(), null),
                        PdfPage.Part.of(around)));
    }

    /** What stands at the foot of every sheet. */
    static List<String> footer(SheetSpec spec) {
        List<String> lines = new ArrayList<>(spec.footerLines());
        lines.add("Print at 100 %, no scaling to the page. Measure the scale bars before use; page 1 has them too.");
        return lines;
    }

    static void header(List<Shape> to, Bounds box, String name, String title, int page, int pages) {
        double y = box.maxYMm() - NAME_MM - 0.5;
        String count = String.format(Locale.ROOT, "Page %d of %d", page, pages);
        double titleX = box.minXMm();
        if (!name.isEmpty()) {
            to.add(text(name, titleX, y, NAME_MM, 0, Shape.Align.START));
            titleX += Lettering.widthMm(name, NAME_MM) + 6;
        }
        double room = box.maxXMm() - Lettering.widthMm(count, PAGE_MM) - 6 - titleX;
        to.add(text(Lettering.fit(title, TITLE_MM, room), titleX, y, TITLE_MM, 0, Shape.Align.START));
        to.add(text(count, box.maxXMm(), y, PAGE_MM, 0, Shape.Align.END));
    }

    static void footer(List<Shape> to, Bounds box, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            double y = box.minYMm() + 0.5 + (lines.size() - 1 - i) * SheetFrame.FOOTER_LINE_MM;
            String line = Lettering.fit(lines.get(i), FOOTER_TEXT_MM, box.widthMm());
            to.add(text(line, box.minXMm(), y, FOOTER_TEXT_MM, 0, Shape.Align.START));
        }
    }

    private static void joins(List<Shape> to, Tile tile) {
        Bounds frame = tile.frame();
        Point2 middle = frame.centre();
        double gap = 1.4;
        tile.neighbours().forEach((edge, name) -> {
            String line = "Joins " + name
                    + (edge.isCut() ? " · cut here, on the dashed line" : " · lay its cut edge on the fine line");
            Point2 at = switch (edge) {
                case LEFT -> new Point2(frame.minXMm() - gap, middle.y());
                case RIGHT -> new Point2(frame.maxXMm() + gap + BAND_TEXT_MM, middle.y());
                case ABOVE -> new Point2(middle.x(), frame.maxYMm() + gap);
                case BELOW -> new Point2(middle.x(), frame.minYMm() - gap - BAND_TEXT_MM);
            };
            to.add(text(line, at.x(), at.y(), BAND_TEXT_MM, edge.isUpright() ? 90 : 0, Shape.Align.MIDDLE));
        });
    }

    /** Both pairs of bars, in mm on the drawing, where the sheet has room for both; none otherwise. */
    static List<Shape> scaleBars(TilePlan plan, Tile tile) {
        // a whole overlap inside a seam, so that no bar meets a registration cross or hides under a neighbour
        Bounds area = tile.core(2 * plan.overlapMm());
        FreeArea free = new FreeArea(area, tile.shapes());
        Optional<Point2> level = free.find(ScaleBars.LENGTH_MM, ScaleBars.DEPTH_MM, Optional.empty());
        Optional<Bounds> taken =
                level.map(c -> new Bounds(c.x(), c.y(), c.x() + ScaleBars.LENGTH_MM, c.y() + ScaleBars.DEPTH_MM));
        Optional<Point2> upright = free.find(ScaleBars.DEPTH_MM, ScaleBars.LENGTH_MM, taken);
        if (level.isEmpty() || upright.isEmpty()) {
            return List.of();
        }
        List<Shape> bars = new ArrayList<>(ScaleBars.horizontal(level.get()));
        bars.addAll(ScaleBars.vertical(upright.get()));
        return bars;
    }

    private static Shape text(String text, double x, double y, double capMm, double rotationDeg, Shape.Align align) {
        return new Shape.Text(Layer.TEXT, text, new Point2(x, y), capMm, rotationDeg, align);
    }
}
