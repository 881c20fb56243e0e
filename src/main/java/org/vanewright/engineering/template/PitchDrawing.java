package org.vanewright.engineering.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.placement.DevicePose;
import org.vanewright.engineering.placement.Placement;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.placement.Unit;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.placement.WingSkin;
import org.vanewright.engineering.wing.WingShape;

/**
 * A close-up of one pitch of a row at true proportion: bases, vanes, the angle with its sign, pitch and gap, the way of
 * the air and which way is inboard, so that nobody has to guess what toe-in means.
 */
public final class PitchDrawing {
    private static final int ARC_STEPS = 12;
    private static final double SAME_MM = 0.05;

    private final TemplateRow row;
    private final List<Shape> shapes = new ArrayList<>();
    private final double letterMm;
    private final double reachMm;

    private PitchDrawing(TemplateRow row) {
        this.row = row;
        this.reachMm = row.plan().footprint().reachMm();
        this.letterMm = Math.max(1.5, (row.plan().pitchMm() + 4 * reachMm) / 58);
    }

    /** Two neighbouring units of the row on the right wing, or on the left where it is fitted there only. */
    public static Drawing of(WingShape wing, Placement placement, TemplateRow row) {
        List<Station> shown = shown(placement, row);
        int panel = shown.get(0).panel();
        SheetFrame frame = SheetFrame.of(
                new WingSkin(wing).flat(row.plan().side(), panel),
                wing.panels().get(panel),
                row.plan().side(),
                side(row));
        return new PitchDrawing(row).draw(frame, shown, members(row));
    }

    /** What {@link #of} describes its drawing as. */
    public static String words(Placement placement, TemplateRow row) {
        return new PitchDrawing(row).description(shown(placement, row).get(0));
    }

    private static Wing side(TemplateRow row) {
        return row.plan().wings().on(Wing.RIGHT) ? Wing.RIGHT : Wing.LEFT;
    }

    private static int members(TemplateRow row) {
        return Unit.of(row.plan()).members().size();
    }

    private static List<Station> shown(Placement placement, TemplateRow row) {
        List<Station> stations = placement.on(side(row), row.plan().index());
        int panel = stations.get(0).panel();
        return shown(
                stations.stream().filter(s -> s.panel() == panel).toList(),
                members(row),
                row.plan().pitchMm());
    }

    /** The first two units that stand a pitch apart; where keep-outs leave no such two, the first unit alone. */
    private static List<Station> shown(List<Station> stations, int members, double pitchMm) {
        for (int i = 0; i + 2 * members <= stations.size(); i += members) {
            double apart =
                    stations.get(i + members).stationMm() - stations.get(i).stationMm();
            if (Math.abs(apart - pitchMm) < SAME_MM) {
                return stations.subList(i, i + 2 * members);
            }
        }
        return stations.subList(0, members);
    }

    private Drawing draw(SheetFrame frame, List<Station> shown, int members) {
        List<DevicePose> poses = shown.stream().map(frame::pose).toList();
        poses.forEach(this::device);
        angle(poses.get(0), shown.get(0).angleDeg());
        if (members == 2) {
            dimension(poses.get(0), poses.get(1), reachMm + 2.5 * letterMm, "gap");
        }
        if (poses.size() > members) {
            dimension(
                    middle(poses.subList(0, members)),
                    middle(poses.subList(members, poses.size())),
                    reachMm + 5.5 * letterMm,
                    "pitch");
        }
        directions(poses, frame.outboardSign());
        return new Drawing("Close-up of row " + row.plan().name(), description(shown.get(0)), shapes);
    }

    private String description(Station first) {
        return String.format(
                Locale.ROOT,
                "Close-up seen from outside the skin, leading edge up: %s, %s %.1f degrees, pitch %.1f mm.",
                arrangement(),
                hand(first.angleDeg()),
                Math.abs(first.angleDeg()),
                row.plan().pitchMm());
    }

    private String arrangement() {
        return switch (row.plan().arrangement()) {
            case CO_ROTATING -> "co-rotating vanes";
            case COMMON_FLOW_DOWN -> "counter-rotating pairs, common flow down";
            case COMMON_FLOW_UP -> "counter-rotating pairs, common flow up";
        };
    }

    private static String hand(double angleDeg) {
        if (angleDeg == 0) {
            return "along the chord";
        }
        return angleDeg > 0 ? "toe-in" : "toe-out";
    }

    private static DevicePose middle(List<DevicePose> unit) {
        DevicePose first = unit.get(0);
        Point2 centre = unit.stream()
                .map(DevicePose::centre)
                .reduce(Point2.ORIGIN, Point2::plus)
                .times(1.0 / unit.size());
        return new DevicePose(centre, first.rearward(), first.outboard(), 0);
    }

    private void device(DevicePose pose) {
        shapes.add(Shape.outline(
                Layer.MARK,
                Pen.THIN,
                Fill.TINT,
                pose.toSheet(row.plan().footprint().baseOutline())));
        row.plan()
                .footprint()
                .vaneOutlines()
                .forEach(v -> shapes.add(Shape.outline(Layer.MARK, Pen.THIN, Fill.ACCENT, pose.toSheet(v))));
        Point2 away = pose.rearward().times(reachMm * 1.35);
        shapes.add(Shape.line(
                Layer.MARK, Pen.CENTRE, pose.centre().minus(away), pose.centre().plus(away)));
    }

    /** Arc from the chordwise line to the vane's axis ahead of the base, with the angle's name and size. */
    private void angle(DevicePose pose, double angleDeg) {
        double radius = reachMm * 1.25;
        Point2 tip = pose.centre().minus(pose.axis().times(reachMm * 1.35));
        shapes.add(Shape.line(Layer.MARK, Pen.FINE, pose.centre(), tip));
        List<Point2> arc = new ArrayList<>();
        for (int i = 0; i <= ARC_STEPS; i++) {
            DevicePose part = new DevicePose(pose.centre(), pose.rearward(), pose.outboard(), angleDeg * i / ARC_STEPS);
            arc.add(pose.centre().minus(part.axis().times(radius)));
        }
        shapes.add(Shape.open(Layer.MARK, Pen.THIN, arc));
        String words = angleWords(angleDeg);
        Point2 at = pose.centre().minus(pose.rearward().times(reachMm * 1.35 + 0.8 * letterMm));
        text(words, at, Shape.Align.MIDDLE);
    }

    private String angleWords(double angleDeg) {
        String pairAngle = PieceMarks.stationText(row.plan().angleDeg()) + "°";
        if (row.plan().footprint().pairOnOneBase()) {
            return (row.plan().arrangement() == Arrangement.COMMON_FLOW_DOWN ? "vanes toe-in " : "vanes toe-out ")
                    + pairAngle;
        }
        return angleDeg == 0
                ? "along the chord"
                : hand(angleDeg) + " " + PieceMarks.stationText(Math.abs(angleDeg)) + "°";
    }

    /** A dimension line behind the bases, square to the chordwise direction. */
    private void dimension(DevicePose from, DevicePose to, double behindMm, String name) {
        Point2 back = from.rearward().times(behindMm);
        Point2 a = from.centre().plus(back);
        Point2 b = to.centre().plus(to.rearward().times(behindMm));
        shapes.add(Shape.line(
                Layer.MARK, Pen.FINE, from.centre().plus(from.rearward().times(reachMm)), extended(a, from)));
        shapes.add(
                Shape.line(Layer.MARK, Pen.FINE, to.centre().plus(to.rearward().times(reachMm)), extended(b, to)));
        shapes.add(Shape.line(Layer.MARK, Pen.THIN, a, b));
        Point2 along = b.minus(a).times(1 / b.distanceTo(a));
        head(a, along.times(-1));
        head(b, along);
        String words = String.format(
                Locale.ROOT, "%s %s mm", name, PieceMarks.stationText("gap".equals(name) ? gapMm() : pitchMm()));
        text(words, a.plus(b).times(0.5).plus(new Point2(0, 0.4 * letterMm)), Shape.Align.MIDDLE);
    }

    private double gapMm() {
        return row.plan().pairGapMm();
    }

    private double pitchMm() {
        return row.plan().pitchMm();
    }

    private Point2 extended(Point2 foot, DevicePose pose) {
        return foot.plus(pose.rearward().times(0.7 * letterMm));
    }

    private void directions(List<DevicePose> poses, int outboardSign) {
        double left = poses.stream().mapToDouble(p -> p.centre().x()).min().orElseThrow() - 1.6 * reachMm;
        double right = poses.stream().mapToDouble(p -> p.centre().x()).max().orElseThrow() + 1.6 * reachMm;
        double top = poses.stream().mapToDouble(p -> p.centre().y()).max().orElseThrow() + 1.2 * reachMm;
        double air = left - 2 * letterMm;
        arrow(new Point2(air, top), new Point2(air, top - 1.4 * reachMm));
        text("airflow", new Point2(air, top + 0.8 * letterMm), Shape.Align.MIDDLE);
        double start = right + (outboardSign > 0 ? 6 : 1) * letterMm;
        arrow(new Point2(start, top), new Point2(start - outboardSign * 5 * letterMm, top));
        text("inboard", new Point2(start - outboardSign * 2.5 * letterMm, top + 0.8 * letterMm), Shape.Align.MIDDLE);
    }

    private void arrow(Point2 from, Point2 to) {
        shapes.add(Shape.line(Layer.MARK, Pen.THIN, from, to));
        head(to, to.minus(from).times(1 / to.distanceTo(from)));
    }

    private void head(Point2 tip, Point2 direction) {
        Point2 neck = tip.minus(direction.times(letterMm));
        Point2 side = new Point2(-direction.y(), direction.x()).times(letterMm * 0.3);
        shapes.add(Shape.outline(Layer.MARK, Pen.FINE, Fill.SOLID, List.of(tip, neck.plus(side), neck.minus(side))));
    }

    private void text(String words, Point2 at, Shape.Align align) {
        shapes.add(new Shape.Text(Layer.TEXT, words, at, letterMm, 0, align));
    }
}
