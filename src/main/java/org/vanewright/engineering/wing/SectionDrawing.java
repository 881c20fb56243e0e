package org.vanewright.engineering.wing;

import static org.vanewright.engineering.drawing.Layer.MARK;
import static org.vanewright.engineering.drawing.Layer.TEXT;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.Shape.Align;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SurfaceSide;

/** A section with its chord, mean line, and tenths of chord, nose to the left, drawn with a chord of 180 mm. */
public final class SectionDrawing {
    private static final double CHORD_MM = PlanSheet.WIDTH_MM;
    private static final int STEPS = 120;
    private static final double TEXT_MM = 2.2;

    private SectionDrawing() {}

    public static Drawing of(Section section) {
        List<Shape> shapes = new ArrayList<>();
        List<Point2> upper = side(section, SurfaceSide.UPPER);
        List<Point2> lower = side(section, SurfaceSide.LOWER);
        List<Point2> loop = new ArrayList<>();
        for (int i = upper.size() - 1; i >= 0; i--) {
            loop.add(upper.get(i));
        }
        loop.addAll(lower.subList(1, lower.size()));
        shapes.add(Shape.outline(MARK, Pen.THICK, Fill.TINT, loop));
        shapes.add(Shape.line(MARK, Pen.CENTRE, new Point2(-3, 0), new Point2(CHORD_MM + 3, 0)));
        if (section.maximumCamber() > 1e-6) {
            shapes.add(Shape.open(MARK, Pen.DASHED, meanLine(section)));
        }
        tenths(shapes, lower);
        return new Drawing(section.designation(), describe(section), shapes);
    }

    private static String describe(Section section) {
        return String.format(
                Locale.ROOT,
                "Section %s, nose to the left: %.1f %% thick, %s, leading-edge radius %.2f %% of the chord.",
                section.designation(),
                section.maximumThickness() * 100,
                section.maximumCamber() > 1e-6
                        ? String.format(Locale.ROOT, "camber %.1f %%", section.maximumCamber() * 100)
                        : "symmetric",
                section.leadingEdgeRadius() * 100);
    }

    /** From nose to tail, closer together where the skin turns most. */
    private static List<Point2> side(Section section, SurfaceSide side) {
        double length = section.arcLength(side);
        return IntStream.rangeClosed(0, STEPS)
                .mapToDouble(i -> length * (1 - Math.cos(Math.PI / 2 * i / STEPS)))
                .mapToObj(s -> section.atArcLength(side, Math.min(s, length)))
                .map(p -> new Point2(p.x() * CHORD_MM, p.y() * CHORD_MM))
                .toList();
    }

    /** Half-way between the sides at one x, as drawn by eye; the true mean line of a thick nose differs a little. */
    private static List<Point2> meanLine(Section section) {
        double end = Math.min(section.maximumX(SurfaceSide.UPPER), section.maximumX(SurfaceSide.LOWER));
        double start = Math.max(
                section.atArcLength(SurfaceSide.UPPER, 0).x(),
                section.atArcLength(SurfaceSide.LOWER, 0).x());
        return IntStream.rangeClosed(0, 40)
                .mapToDouble(i -> Math.min(end, start + (end - start) * i / 40))
                .mapToObj(x -> new Point2(
                        x * CHORD_MM,
                        (section.atX(SurfaceSide.UPPER, x).y()
                                        + section.atX(SurfaceSide.LOWER, x).y())
                                / 2
                                * CHORD_MM))
                .toList();
    }

    private static void tenths(List<Shape> shapes, List<Point2> lower) {
        double y = lower.stream().mapToDouble(Point2::y).min().orElse(0) - 3;
        shapes.add(Shape.line(MARK, Pen.THIN, new Point2(0, y), new Point2(CHORD_MM, y)));
        for (int i = 0; i <= 10; i++) {
            double x = i * CHORD_MM / 10;
            shapes.add(Shape.line(MARK, Pen.THIN, new Point2(x, y), new Point2(x, y - (i % 5 == 0 ? 2 : 1.2))));
            if (i % 2 == 0) {
                Align align = i == 0 ? Align.START : i == 10 ? Align.END : Align.MIDDLE;
                shapes.add(new Shape.Text(TEXT, i * 10 + " %", new Point2(x, y - 5.2), TEXT_MM, 0, align));
            }
        }
    }
}
