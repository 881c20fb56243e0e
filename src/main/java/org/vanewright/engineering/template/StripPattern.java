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
import org.vanewright.engineering.placement.DevicePose;
import org.vanewright.engineering.placement.Hand;
import org.vanewright.engineering.placement.PlacementNote;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.placement.Unit;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.wing.WingPanel;

/**
 * A short piece with a few positions of a row on a constant-chord panel, to be slid along: its first centre line is
 * laid on the last device placed. Saves paper and errors, since the pattern is the same everywhere along the row.
 */
final class StripPattern {
    private static final double LENGTH_MM = 265;
    private static final int MIN_UNITS = 3;

    /** So that the step line does not run through the letter. */
    private static final double LETTER_ASIDE_MM = 2.6;

    private final TemplateRow row;
    private final TemplateLabel label;
    private final Wing wing;
    private final SheetFrame frame;
    private final Unit unit;

    StripPattern(TemplateRow row, TemplateLabel label, Wing wing, SheetFrame frame) {
        this.row = row;
        this.label = label;
        this.wing = wing;
        this.frame = frame;
        this.unit = Unit.of(row.plan());
    }

    /** True on a panel of constant chord and section with room for three units of the row. */
    static boolean suits(TemplateRow row, WingPanel panel) {
        double length = (MIN_UNITS - 1) * row.plan().pitchMm() + 2 * room(row);
        return panel.developable()
                && panel.innerChordMm() == panel.outerChordMm()
                && row.plan().toMm() - row.plan().fromMm()
                        >= (MIN_UNITS - 1) * row.plan().pitchMm()
                && panel.spanMm() >= length
                && length <= 2 * LENGTH_MM;
    }

    private static double room(TemplateRow row) {
        return Unit.of(row.plan()).halfSpanMm() + row.plan().footprint().reachMm() + PieceExtent.MARGIN_MM;
    }

    Drawing draw(String name, List<Station> placed, List<PlacementNote> notes) {
        List<Station> positions = positions();
        PieceExtent extent = new PieceExtent(frame, row, positions);
        extent.requireRegisterClearOfBases();
        PieceMarks marks = new PieceMarks(frame, extent, row.plan().footprint());
        List<Shape> shapes = new ArrayList<>(new PieceOutline(frame, extent, row.register()).shapes());
        for (Station s : positions) {
            shapes.addAll(marks.device(frame.pose(s), letter(s.number()), LETTER_ASIDE_MM));
        }
        shapes.add(marks.rowLine());
        shapes.addAll(stepMarks(extent, positions));
        PieceBuilder builder = new PieceBuilder(row, label, wing);
        shapes.addAll(new PieceLettering(frame, extent).shapes(lines(name, builder, placed, notes)));
        return new Drawing(
                builder.title(name),
                String.format(
                        Locale.ROOT,
                        "Repeating strip with %d positions at a pitch of %.1f mm, to be slid along the register line.",
                        positions.size(),
                        row.plan().pitchMm()),
                shapes);
    }

    /** Positions on the strip; on a cylinder they may be drawn anywhere, so they start near the panel's inner end. */
    private List<Station> positions() {
        WingPanel panel = frame.panel();
        double pitch = row.plan().pitchMm();
        double available = Math.min(panel.spanMm(), Math.max(LENGTH_MM, 2 * room(row) + 2 * pitch)) - 2 * room(row);
        int units = Math.max(MIN_UNITS, (int) Math.floor(available / pitch + 1e-9) + 1);
        List<Station> positions = new ArrayList<>();
        for (int i = 0; i < units; i++) {
            double centre = panel.innerStationMm() + room(row) + i * pitch;
            for (Unit.Member member : unit.members()) {
                positions.add(position(i + 1, centre + member.offsetMm(), member.angleDeg()));
            }
        }
        return positions;
    }

    private Station position(int number, double stationMm, double angleDeg) {
        double arc = frame.rowArcMm(row.plan().position(), stationMm);
        double x = frame.xOverC(stationMm, arc);
        double sign = row.plan().angleSign(wing);
        return new Station(
                number,
                wing,
                row.plan().index(),
                row.plan().side(),
                0,
                stationMm,
                frame.panel().chordMm(stationMm),
                x,
                arc,
                sign * angleDeg,
                Hand.of(sign * angleDeg),
                Double.POSITIVE_INFINITY,
                false);
    }

    private static String letter(int number) {
        return Character.toString((char) ('a' + (number - 1) % 26));
    }

    /** Solid triangles in the band under the centre of the first and last unit. */
    private List<Shape> stepMarks(PieceExtent extent, List<Station> positions) {
        double half = unit.members().size() == 2 ? unit.members().get(1).offsetMm() : 0;
        double first = positions.get(0).stationMm() + half;
        double last = positions.get(positions.size() - 1).stationMm() - half;
        List<Shape> shapes = new ArrayList<>();
        for (double station : new double[] {first, last}) {
            double edge = extent.bandEdgeArcMm(station);
            DevicePose pose = frame.pose(station, frame.xOverC(station, edge), 0);
            double sign = extent.bandBehind() ? 1 : -1;
            Point2 base = pose.centre().plus(pose.rearward().times(5 * sign));
            shapes.add(Shape.outline(
                    Layer.MARK,
                    Pen.FINE,
                    Fill.SOLID,
                    List.of(
                            pose.centre(),
                            base.plus(pose.outboard().times(1.8)),
                            base.minus(pose.outboard().times(1.8)))));
            shapes.add(Shape.line(
                    Layer.MARK,
                    Pen.THIN,
                    frame.atArc(station, extent.bandBehind() ? extent.frontArcMm(station) : edge),
                    frame.atArc(station, extent.bandBehind() ? edge : extent.rearArcMm(station))));
        }
        return shapes;
    }

    private List<String> lines(String name, PieceBuilder builder, List<Station> placed, List<PlacementNote> notes) {
        double first = placed.get(0).stationMm();
        double last = placed.get(placed.size() - 1).stationMm();
        long exceptions = notes.stream()
                .filter(n -> n.row() == row.plan().index())
                .filter(n -> n.requestedMm() >= frame.panel().innerStationMm()
                        && n.requestedMm() <= frame.panel().outerStationMm())
                .count();
        String except = exceptions == 0
                ? ""
                : " · " + exceptions + (exceptions == 1 ? " place differs" : " places differ")
                        + ": see the station table";
        return List.of(
                builder.place(wing, row.plan()) + " · ROW " + (row.plan().index() + 1) + " · piece " + name,
                label.line(),
                String.format(
                        Locale.ROOT,
                        "Pitch %s mm: first line on the middle of the last %s placed · devices from %s to %s mm%s · %s",
                        PieceMarks.stationText(row.plan().pitchMm()),
                        unit.members().size() == 2 ? "pair" : "device",
                        PieceMarks.stationText(first),
                        PieceMarks.stationText(last),
                        except,
                        builder.registerWords()));
    }
}
