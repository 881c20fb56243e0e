package org.vanewright.engineering.wing;

import static org.vanewright.engineering.drawing.Layer.MARK;
import static org.vanewright.engineering.drawing.Layer.TEXT;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.Shape.Align;
import org.vanewright.engineering.geometry.Point2;

/**
 * A surface in plan: panels, chord fractions, keep-outs, stations and a scale bar, reduced to a sheet of
 * {@link PlanSheet#WIDTH_MM}. Seen from above with the nose up; a surface that is not mirrored is drawn alone.
 */
public final class PlanDrawing {
    private static final double[] CHORD_FRACTIONS = {0.10, 0.25, 0.50, 0.75};
    private static final double TEXT_MM = 2.2;
    private static final double ROW_MM = 4.2;
    private static final double LABEL_ROOM_MM = 15;
    private static final double HATCH_MM = 1.6;
    private static final int REASON_LENGTH = 34;

    /**
     * A span interval where no device may sit.
     *
     * @param fromMm inner span station
     * @param toMm outer span station
     * @param reason written beneath the plan
     */
    public record KeepOut(double fromMm, double toMm, String reason) {}

    /** How lengths are written, and how long the scale bar is. */
    public interface Lettering {
        /** A span station or chord in the reader's units. */
        String length(double mm);

        /** True length of the scale bar. */
        double scaleBarMm();

        /** What is written beside the scale bar. */
        String scaleBar();
    }

    private final List<WingPanel> panels;
    private final PlanSheet sheet;
    private final List<Shape> shapes = new ArrayList<>();

    private PlanDrawing(List<WingPanel> panels, boolean mirrored) {
        this.panels = panels;
        this.sheet = PlanSheet.fitting(panels, mirrored);
    }

    /** The full drawing. */
    public static Drawing of(
            String title, List<WingPanel> panels, boolean mirrored, List<KeepOut> keepOuts, Lettering lettering) {
        PlanDrawing plan = new PlanDrawing(panels, mirrored);
        plan.outlines(Fill.TINT);
        plan.chordLines();
        keepOuts.forEach(k -> plan.strips(k, true));
        plan.chordLabels();
        plan.stationLabels(lettering);
        double below = plan.keepOutLabels(keepOuts);
        plan.scaleBar(lettering, below - 2 * ROW_MM);
        return new Drawing(title, describe(panels, mirrored, keepOuts, lettering), plan.shapes);
    }

    /** Outline and keep-outs only, for lists. */
    public static Drawing thumbnail(
            String title, List<WingPanel> panels, boolean mirrored, List<KeepOut> keepOuts, Lettering lettering) {
        PlanDrawing plan = new PlanDrawing(panels, mirrored);
        plan.outlines(Fill.TINT);
        keepOuts.forEach(k -> plan.strips(k, false));
        return new Drawing(title, describe(panels, mirrored, keepOuts, lettering), plan.shapes);
    }

    private static String describe(
            List<WingPanel> panels, boolean mirrored, List<KeepOut> keepOuts, Lettering lettering) {
        WingPanel root = panels.get(0);
        WingPanel tip = panels.get(panels.size() - 1);
        return String.format(
                Locale.ROOT,
                "%s in %d %s a side, from station %s to %s, chord %s at the root and %s at the" + " tip, %s.",
                mirrored ? "Seen from above, nose up: right and left surface" : "Leading edge up: one surface",
                panels.size(),
                panels.size() == 1 ? "panel" : "panels",
                lettering.length(root.innerStationMm()),
                lettering.length(tip.outerStationMm()),
                lettering.length(root.innerChordMm()),
                lettering.length(tip.outerChordMm()),
                keepOuts.isEmpty() ? "no keep-outs" : keepOuts.size() + " keep-outs, listed beneath");
    }

    private boolean[] sides() {
        return sheet.mirrored() ? new boolean[] {false, true} : new boolean[] {false};
    }

    private void outlines(Fill fill) {
        for (boolean left : sides()) {
            for (WingPanel p : panels) {
                List<Point2> corners = List.of(
                        sheet.at(p, p.innerStationMm(), 0, left),
                        sheet.at(p, p.outerStationMm(), 0, left),
                        sheet.at(p, p.outerStationMm(), 1, left),
                        sheet.at(p, p.innerStationMm(), 1, left));
                shapes.add(Shape.outline(MARK, Pen.THICK, fill, corners));
            }
        }
    }

    private void chordLines() {
        for (boolean left : sides()) {
            for (WingPanel p : panels) {
                for (double fraction : CHORD_FRACTIONS) {
                    Pen pen = fraction == 0.25 ? Pen.CENTRE : Pen.FINE;
                    shapes.add(Shape.line(
                            MARK,
                            pen,
                            sheet.at(p, p.innerStationMm(), fraction, left),
                            sheet.at(p, p.outerStationMm(), fraction, left)));
                }
            }
        }
    }

    /** 25 and 75 % at the right tip, 10 and 50 % at the left one, so that neighbours never touch. */
    private void chordLabels() {
        WingPanel tip = panels.get(panels.size() - 1);
        for (int i = 0; i < CHORD_FRACTIONS.length; i++) {
            boolean left = sheet.mirrored() && i % 2 == 0;
            Point2 end = sheet.at(tip, tip.outerStationMm(), CHORD_FRACTIONS[i], left);
            Point2 at = end.plus(new Point2(left ? -1.2 : 1.2, -TEXT_MM / 2));
            if (sheet.mirrored() || i % 2 == 1) {
                text(Math.round(CHORD_FRACTIONS[i] * 100) + " %", at, left ? Align.END : Align.START);
            }
        }
    }

    private void strips(KeepOut keepOut, boolean hatched) {
        for (WingPanel p : panels) {
            double from = Math.max(keepOut.fromMm(), p.innerStationMm());
            double to = Math.min(keepOut.toMm(), p.outerStationMm());
            if (from < to) {
                for (boolean left : sides()) {
                    strip(p, from, to, left, hatched);
                }
            }
        }
    }

    private void strip(WingPanel p, double from, double to, boolean left, boolean hatched) {
        List<Point2> corners = List.of(
                sheet.at(p, from, 0, left),
                sheet.at(p, to, 0, left),
                sheet.at(p, to, 1, left),
                sheet.at(p, from, 1, left));
        shapes.add(Shape.outline(MARK, Pen.FINE, Fill.ACCENT, corners));
        if (hatched) {
            int lines = (int) Math.floor(p.chordMm(from) * sheet.mmPerMm() / HATCH_MM);
            double slant = Math.min(1.0 / Math.max(lines, 1), (to - from) / p.chordMm(from));
            for (int i = 0; i < lines; i++) {
                double rear = (i + 1.0) / (lines + 1);
                shapes.add(Shape.line(
                        MARK,
                        Pen.FINE,
                        sheet.at(p, from, rear, left),
                        sheet.at(p, to, Math.max(0, rear - slant), left)));
            }
        }
    }

    /** Reasons beneath the right side, one a row, inner ones first so that no leader crosses lettering. */
    private double keepOutLabels(List<KeepOut> keepOuts) {
        double lowest = shapes.stream()
                .filter(Shape.Polyline.class::isInstance)
                .map(Shape.Polyline.class::cast)
                .flatMap(l -> l.points().stream())
                .mapToDouble(Point2::y)
                .min()
                .orElse(0);
        List<KeepOut> ordered = keepOuts.stream()
                .sorted((a, b) -> Double.compare(a.fromMm() + a.toMm(), b.fromMm() + b.toMm()))
                .toList();
        double y = lowest - 1.5;
        for (KeepOut keepOut : ordered) {
            double middle = (keepOut.fromMm() + keepOut.toMm()) / 2;
            WingPanel panel = PlanSheet.panelAt(panels, middle);
            Point2 edge = sheet.at(panel, middle, 1, false);
            y -= ROW_MM;
            Point2 foot = new Point2(edge.x(), y + TEXT_MM / 2);
            shapes.add(Shape.open(MARK, Pen.THIN, List.of(edge, foot, foot.minus(new Point2(1.5, 0)))));
            text(abbreviated(keepOut.reason()), new Point2(edge.x() - 2.3, y), Align.END);
        }
        return y;
    }

    private void stationLabels(Lettering lettering) {
        List<Double> stations = new ArrayList<>(List.of(panels.get(0).innerStationMm()));
        panels.forEach(p -> stations.add(p.outerStationMm()));
        double top = highest() + 2;
        double lastX = Double.NEGATIVE_INFINITY;
        for (double station : stations) {
            WingPanel panel = PlanSheet.panelAt(panels, station);
            Point2 edge = sheet.at(panel, station, 0, false);
            shapes.add(Shape.line(MARK, Pen.FINE, edge.plus(new Point2(0, 0.8)), new Point2(edge.x(), top + 1)));
            if (edge.x() - lastX >= LABEL_ROOM_MM) {
                text(lettering.length(station), new Point2(edge.x(), top + 2), alignAt(edge.x()));
                lastX = edge.x();
            }
        }
        if (sheet.mirrored()) {
            chordsOnTheLeft(lettering, stations, top);
            shapes.add(Shape.line(MARK, Pen.CENTRE, new Point2(0, top + 6), new Point2(0, lowestOf(panels) - 2)));
        }
    }

    private void chordsOnTheLeft(Lettering lettering, List<Double> stations, double top) {
        double lastX = Double.POSITIVE_INFINITY;
        for (double station : stations) {
            WingPanel panel = PlanSheet.panelAt(panels, station);
            Point2 edge = sheet.at(panel, station, 0, true);
            if (lastX - edge.x() >= 1.5 * LABEL_ROOM_MM && edge.x() < -LABEL_ROOM_MM) {
                shapes.add(Shape.line(MARK, Pen.FINE, edge.plus(new Point2(0, 0.8)), new Point2(edge.x(), top + 1)));
                text(
                        "chord " + lettering.length(panel.chordMm(station)),
                        new Point2(edge.x(), top + 2),
                        alignAt(edge.x()));
                lastX = edge.x();
            }
        }
    }

    /** Lettering stays clear of the centre line and within the drawing. */
    private Align alignAt(double x) {
        double edge = PlanSheet.WIDTH_MM / 2 - LABEL_ROOM_MM;
        if (Math.abs(x) < LABEL_ROOM_MM / 2) {
            return x < 0 ? Align.END : Align.START;
        }
        return x < -edge ? Align.START : x > edge ? Align.END : Align.MIDDLE;
    }

    private double highest() {
        return panels.stream()
                .mapToDouble(p -> -Math.min(p.innerLeadingEdgeMm(), p.outerLeadingEdgeMm()) * sheet.mmPerMm())
                .max()
                .orElse(0);
    }

    private double lowestOf(List<WingPanel> all) {
        return all.stream()
                .mapToDouble(p ->
                        -Math.max(p.innerLeadingEdgeMm() + p.innerChordMm(), p.outerLeadingEdgeMm() + p.outerChordMm())
                                * sheet.mmPerMm())
                .min()
                .orElse(0);
    }

    private void scaleBar(Lettering lettering, double y) {
        double length = lettering.scaleBarMm() * sheet.mmPerMm();
        double startX = sheet.mirrored()
                ? -panels.get(panels.size() - 1).outerStationMm() * sheet.mmPerMm()
                : panels.get(0).innerStationMm() * sheet.mmPerMm();
        for (int i = 0; i < 2; i++) {
            double from = startX + i * length / 2;
            shapes.add(Shape.outline(
                    MARK,
                    Pen.THIN,
                    i == 0 ? Fill.SOLID : Fill.NONE,
                    List.of(
                            new Point2(from, y),
                            new Point2(from + length / 2, y),
                            new Point2(from + length / 2, y + 1.2),
                            new Point2(from, y + 1.2))));
        }
        text(lettering.scaleBar(), new Point2(startX + length + 2, y - 0.5), Align.START);
    }

    private void text(String words, Point2 at, Align align) {
        shapes.add(new Shape.Text(TEXT, words, at, TEXT_MM, 0, align));
    }

    private static String abbreviated(String reason) {
        return reason.length() <= REASON_LENGTH ? reason : reason.substring(0, REASON_LENGTH - 1) + "…";
    }
}
