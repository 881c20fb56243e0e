package org.vanewright.bench.web.page;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.SvgWriter;
import org.vanewright.engineering.flow.FlowResult;
import org.vanewright.engineering.flow.SideFlow;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.SectionDrawing;

/** A section with the places at which its boundary layers change. */
final class FlowPicture {
    /** As {@link SectionDrawing} draws it. */
    private static final double CHORD_MM = 180;

    private static final double TICK_MM = 4;
    private static final double GAP_MM = 1;
    private static final double TEXT_MM = 3;

    private FlowPicture() {}

    static Answer.Picture of(Section section, FlowResult flow) {
        Drawing outline = SectionDrawing.of(section);
        List<Shape> shapes = new ArrayList<>(outline.shapes());
        StringBuilder words = new StringBuilder(outline.description());
        side(shapes, words, section, SurfaceSide.UPPER, flow.upper());
        side(shapes, words, section, SurfaceSide.LOWER, flow.lower());
        boolean layers = flow.coupling() != null;
        return new Answer.Picture(
                SvgWriter.inline(new Drawing(outline.title(), words.toString(), shapes), "drawing section", "outline"),
                "Section " + section.designation()
                        + (layers ? ". T: the layer turns turbulent; S: it separates." : "."));
    }

    private static void side(
            List<Shape> shapes, StringBuilder words, Section section, SurfaceSide side, SideFlow flow) {
        String name = side == SurfaceSide.UPPER ? "upper" : "lower";
        mark(shapes, section, side, flow.transitionX(), "T");
        mark(shapes, section, side, flow.separationX(), "S");
        say(words, name, "turns turbulent", flow.transitionX());
        say(words, name, "separates", flow.separationX());
    }

    private static void say(StringBuilder words, String side, String does, @Nullable Double x) {
        if (x != null) {
            words.append(" The layer on the ")
                    .append(side)
                    .append(" side ")
                    .append(does)
                    .append(" at ");
            words.append(Shown.chord(x, "")).append('.');
        }
    }

    /** A tick outward from the skin; inward where the scale beneath the section leaves no room. */
    private static void mark(List<Shape> shapes, Section section, SurfaceSide side, @Nullable Double x, String letter) {
        if (x == null) {
            return;
        }
        double within = Math.min(Math.max(x, section.atArcLength(side, 0).x()), section.maximumX(side));
        Point2 foot = new Point2(within * CHORD_MM, section.atX(side, within).y() * CHORD_MM);
        boolean down = side == SurfaceSide.LOWER && foot.y() - lowest(shapes) > TICK_MM + GAP_MM + TEXT_MM;
        Point2 end = new Point2(foot.x(), foot.y() + (down ? -TICK_MM : TICK_MM));
        shapes.add(Shape.line(Layer.CUT, Pen.THICK, foot, end));
        Point2 base = new Point2(end.x(), end.y() + (down ? -GAP_MM - TEXT_MM : GAP_MM));
        shapes.add(new Shape.Text(Layer.TEXT, letter, base, TEXT_MM, 0, Shape.Align.MIDDLE));
    }

    /** Height of the scale, which is the lowest line drawn but for its own ticks. */
    private static double lowest(List<Shape> shapes) {
        return shapes.stream()
                .filter(Shape.Polyline.class::isInstance)
                .flatMap(s -> ((Shape.Polyline) s).points().stream())
                .mapToDouble(Point2::y)
                .min()
                .orElse(0);
    }
}
