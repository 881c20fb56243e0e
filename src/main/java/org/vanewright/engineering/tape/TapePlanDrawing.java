package org.vanewright.engineering.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.sheet.ScaleBars;
import org.vanewright.engineering.geometry.Point2;

/** A cut plan as a drawing at true scale: outlines to cut, the roll's edges to see. */
public final class TapePlanDrawing {
    private static final double LETTER_MM = 3;
    private static final double LINE_MM = 5.5;
    private static final double GAP_MM = 12;

    private TapePlanDrawing() {}

    /** For a cutter: with scale bars in both directions, and what must be said beneath. */
    public static Drawing forCutter(TapePlan plan, String heading, List<String> lines) {
        List<Shape> shapes = new ArrayList<>(pieces(plan, plan.lengthMm()));
        Point2 corner = new Point2(0, -GAP_MM - ScaleBars.LENGTH_MM);
        shapes.addAll(ScaleBars.vertical(corner));
        double left = ScaleBars.DEPTH_MM + 8;
        shapes.addAll(ScaleBars.horizontal(corner.plus(new Point2(left, 0))));
        double y = -GAP_MM - LETTER_MM;
        shapes.add(text(heading, new Point2(left, y)));
        for (String line : lines) {
            y -= LINE_MM;
            shapes.add(text(line, new Point2(left, y)));
        }
        return new Drawing(heading, words(plan), shapes);
    }

    /** For a page: the beginning of the roll and the pieces there, without lettering. */
    public static Drawing forPage(TapePlan plan, String title, double mostMm) {
        return new Drawing(title, words(plan), pieces(plan, mostMm));
    }

    private static List<Shape> pieces(TapePlan plan, double mostMm) {
        List<Shape> shapes = new ArrayList<>();
        double end = Math.max(1, Math.min(plan.lengthMm(), mostMm));
        shapes.add(Shape.outline(
                Layer.MARK,
                Pen.DASHED,
                Fill.NONE,
                List.of(
                        Point2.ORIGIN,
                        new Point2(end, 0),
                        new Point2(end, plan.rollWidthMm()),
                        new Point2(0, plan.rollWidthMm()))));
        for (CutPiece cut : plan.cuts()) {
            if (cut.bounds().maxXMm() > end) {
                continue;
            }
            shapes.add(Shape.outline(Layer.CUT, Pen.THIN, Fill.TINT, cut.outline()));
        }
        return shapes;
    }

    private static String words(TapePlan plan) {
        return String.format(
                Locale.ROOT,
                "%d pieces of tape on a roll %.1f mm wide, in strips across it; %.0f mm of the roll.",
                plan.cuts().size(),
                plan.rollWidthMm(),
                plan.lengthMm());
    }

    private static Shape text(String words, Point2 at) {
        return new Shape.Text(Layer.TEXT, words, at, LETTER_MM, 0, Shape.Align.START);
    }
}
