package org.vanewright.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.flow.LayerStation;
import org.vanewright.engineering.flow.SideFlow;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.solid.DeviceDesign.Planform;
import org.vanewright.engineering.solid.VaneSide;

/** The boundary layer round a section, and a device in it. */
public final class LayerDrawings {
    private static final double WIDTH_MM = 180;
    private static final double ROOM_MM = 22;
    private static final int[] MAGNIFICATIONS = {10, 5, 2, 1};
    private static final double TEXT_MM = 2.6;
    private static final int STEPS = 60;

    private LayerDrawings() {}

    /**
     * A drawing with what it is magnified by.
     *
     * @param magnification of the layer's thickness; the section itself is true
     */
    public record Magnified(Drawing drawing, int magnification) {}

    /** The section with the layer's edge on both sides, thickness magnified so that it can be seen. */
    public static Magnified section(StationFlow here, Place place) {
        double thickest =
                Math.max(thickest(here.flow().upper()), thickest(here.flow().lower()));
        int magnification = 1;
        for (int m : MAGNIFICATIONS) {
            if (thickest * WIDTH_MM * m <= ROOM_MM) {
                magnification = m;
                break;
            }
        }
        List<Shape> shapes = new ArrayList<>();
        List<Point2> outline = new ArrayList<>(skin(here.flow().upper()));
        Collections.reverse(outline);
        outline.addAll(skin(here.flow().lower()));
        shapes.add(Shape.outline(Layer.MARK, Pen.THICK, Fill.TINT, outline));
        edge(here.flow().upper(), 1, magnification, shapes);
        edge(here.flow().lower(), -1, magnification, shapes);
        pointer(here.side(place.side()), place, shapes);
        String description = String.format(
                Locale.ROOT,
                "Section %s at %.1f°, nose to the left, with the edge of the boundary layer on both sides; its thickness is"
                        + " drawn %d times too large.",
                here.sectionName(),
                here.flow().angleOfAttackDeg(),
                magnification);
        return new Magnified(new Drawing(here.sectionName(), description, shapes), magnification);
    }

    private static void pointer(SideFlow side, Place place, List<Shape> shapes) {
        double x = place.chordFraction() * WIDTH_MM;
        double up = place.side() == SurfaceSide.UPPER ? 1 : -1;
        double y = heightAt(side, place.chordFraction());
        String word = place.heightMm() == null ? "here" : "device";
        shapes.add(Shape.line(Layer.MARK, Pen.THIN, new Point2(x, y), new Point2(x, y + up * 16)));
        shapes.add(new Shape.Text(Layer.TEXT, word, new Point2(x + 1.5, y + up * 14), TEXT_MM, 0, Shape.Align.START));
    }

    private static double thickest(SideFlow side) {
        return side.stations().stream()
                .map(LayerStation::thickness)
                .filter(t -> t != null)
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(0);
    }

    private static List<Point2> skin(SideFlow side) {
        return side.stations().stream()
                .map(s -> new Point2(s.x() * WIDTH_MM, s.y() * WIDTH_MM))
                .toList();
    }

    /** Square to the skin, as far as there is a layer. */
    private static void edge(SideFlow side, int up, int magnification, List<Shape> shapes) {
        List<LayerStation> stations = side.stations();
        List<Point2> points = new ArrayList<>();
        for (int i = 1; i < stations.size() - 1; i++) {
            Double thickness = stations.get(i).thickness();
            if (thickness == null) {
                break;
            }
            LayerStation before = stations.get(i - 1);
            LayerStation after = stations.get(i + 1);
            double dx = after.x() - before.x();
            double dy = after.y() - before.y();
            double length = Math.hypot(dx, dy);
            double offset = up * thickness * magnification * WIDTH_MM / length;
            points.add(new Point2(
                    stations.get(i).x() * WIDTH_MM - dy * offset,
                    stations.get(i).y() * WIDTH_MM + dx * offset));
        }
        if (points.size() > 1) {
            shapes.add(Shape.open(Layer.MARK, Pen.DASHED, points));
        }
    }

    private static double heightAt(SideFlow side, double chordFraction) {
        LayerStation nearest = side.stations().get(side.stations().size() - 1);
        for (LayerStation s : side.stations()) {
            if (Math.abs(s.x() - chordFraction) < Math.abs(nearest.x() - chordFraction)) {
                nearest = s;
            }
        }
        return nearest.y() * WIDTH_MM;
    }

    /** The device from the side in the layer where it stands, both to one scale, on skin drawn flat. */
    public static Drawing device(RowStudy study) {
        VaneSide vane = study.row().vane();
        double window = 4 * vane.lengthMm();
        double scale = WIDTH_MM / window;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Shape.line(Layer.MARK, Pen.THICK, new Point2(0, 0), new Point2(WIDTH_MM, 0)));
        layer(study, window, scale, shapes);
        double start = (window - vane.lengthMm()) / 2 * scale;
        shapes.add(Shape.outline(Layer.MARK, Pen.THICK, Fill.ACCENT, outline(vane, start, scale)));
        double top = vane.heightMm() * scale;
        shapes.add(new Shape.Text(
                Layer.TEXT,
                String.format(Locale.ROOT, "h %.1f mm", vane.heightMm()),
                new Point2(start + vane.lengthMm() * scale + 2, top / 2),
                TEXT_MM,
                0,
                Shape.Align.START));
        Double thickness = study.layer().thicknessMm();
        String layer = thickness == null ? "no attached layer" : String.format(Locale.ROOT, "δ %.1f mm", thickness);
        if (thickness != null) {
            shapes.add(new Shape.Text(
                    Layer.TEXT, layer, new Point2(2, thickness * scale + 1.5), TEXT_MM, 0, Shape.Align.START));
        }
        String description = String.format(
                Locale.ROOT,
                "The vane from the side, %.1f mm high, in the boundary layer where it stands (%s), both to one scale; the air"
                        + " comes from the left, the vane is drawn as if it stood along it.",
                vane.heightMm(),
                layer);
        return new Drawing("Device in the layer", description, shapes);
    }

    private static void layer(RowStudy study, double windowMm, double scale, List<Shape> shapes) {
        SideFlow side = study.row().side() == SurfaceSide.UPPER
                ? study.flow().upper()
                : study.flow().lower();
        List<Point2> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double offset = windowMm * ((double) i / STEPS - 0.5);
            double fraction = study.row().chordFraction() + offset / study.chordMm();
            Double thickness = fraction <= 0.001 || fraction >= 1
                    ? null
                    : LayerHere.of(side, fraction, study.chordMm()).thicknessMm();
            if (thickness != null) {
                points.add(new Point2(i * WIDTH_MM / STEPS, thickness * scale));
            }
        }
        if (points.size() > 1) {
            shapes.add(Shape.open(Layer.MARK, Pen.DASHED, points));
        }
    }

    private static List<Point2> outline(VaneSide vane, double start, double scale) {
        double end = start + vane.lengthMm() * scale;
        double top = vane.heightMm() * scale;
        List<Point2> points = new ArrayList<>(List.of(new Point2(start, 0)));
        if (vane.planform() == Planform.OGIVAL) {
            for (int i = 1; i < 12; i++) {
                double t = i / 12.0;
                points.add(new Point2(start + t * (end - start), top * t * (2 - t)));
            }
            points.add(new Point2(end, top));
        } else if (vane.planform() == Planform.TRIANGULAR) {
            points.add(new Point2(end, top));
        } else {
            points.add(new Point2(end - vane.tipLengthMm() * scale, top));
            points.add(new Point2(end, top));
        }
        points.add(new Point2(end, 0));
        return points;
    }
}
