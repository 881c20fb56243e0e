package org.vanewright.engineering.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Lettering;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.placement.DevicePose;

/** The words and arrows in the band beside the bases, repeated so that every sheet of a tiled print carries them. */
final class PieceLettering {
    private static final double REPEAT_MM = 560;
    private static final double ARROWS_MM = 38;
    private static final double INSET_MM = 6;
    private static final double TITLE_MM = 3.6;
    private static final double LINE_MM = 2.6;
    private static final double BROKEN_MM = 2.0;
    private static final double SMALLEST_MM = 1.6;

    /** A cutter's program may put wider letters in place of ours. */
    private static final double WIDER = 1.12;

    private static final String SEPARATOR = " · ";

    /** First base line below the edge of a band behind the bases, past the span stations. */
    private static final double BELOW_STATIONS_MM = 15;

    /** First base line below the edge of a band ahead of the bases, whose lower edge has the span stations. */
    private static final double ABOVE_STATIONS_MM = 6.5;

    private static final double[] STEPS_MM = {0, 5.5, LetteringBand.LINE_MM};

    private final SheetFrame frame;
    private final PieceExtent extent;
    private final double scale;

    PieceLettering(SheetFrame frame, PieceExtent extent) {
        this.frame = frame;
        this.extent = extent;
        this.scale = extent.band().scale();
    }

    /** Where a block of lettering stands on the page. */
    private record Block(Point2 corner, Point2 right, Point2 down, double readingDeg, double scale) {
        Point2 at(double rightMm, double downMm) {
            return corner.plus(right.times(rightMm * scale)).plus(down.times(downMm * scale));
        }
    }

    List<Shape> shapes(List<String> lines) {
        double length = extent.toMm() - extent.fromMm();
        int blocks = Math.max(1, (int) Math.floor(length / REPEAT_MM));
        double blockLength = length / blocks;
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < blocks; i++) {
            double from = extent.fromMm() + i * blockLength;
            shapes.addAll(block(from, from + blockLength, lines));
        }
        return shapes;
    }

    private List<Shape> block(double fromMm, double toMm, List<String> lines) {
        double leftStation = frame.outboardSign() > 0 ? fromMm : toMm;
        double reading = readingDeg(fromMm, toMm);
        Point2 right = new Point2(1, 0).rotated(Math.toRadians(reading));
        Point2 down = right.rotated(-Math.PI / 2);
        double rightStation = frame.outboardSign() > 0 ? toMm : fromMm;
        double left = INSET_MM + Math.max(0, drift(leftStation, right, down));
        double lost = left + INSET_MM + Math.max(0, -drift(rightStation, right, down));
        Point2 corner =
                frame.atArc(leftStation, extent.bandTopArcMm(leftStation)).plus(right.times(left));
        Block block = new Block(corner, right, down, reading, scale);
        double first = extent.bandBehind() ? BELOW_STATIONS_MM : ABOVE_STATIONS_MM;
        List<Shape> shapes = new ArrayList<>(arrows(block, first - 3.6, pose(fromMm, toMm)));
        double room = (toMm - fromMm - lost) / scale - ARROWS_MM;
        double below = first;
        List<Line> wrapped = wrap(lines, room, 3 + LetteringBand.furtherLines(extent.span()));
        for (int i = 0; i < wrapped.size(); i++) {
            below += STEPS_MM[Math.min(i, STEPS_MM.length - 1)];
            Line line = wrapped.get(i);
            shapes.add(new Shape.Text(
                    Layer.TEXT,
                    line.text(),
                    block.at(ARROWS_MM, below),
                    line.heightMm() * scale,
                    reading,
                    Shape.Align.START));
        }
        return shapes;
    }

    /** How far the end of a piece moves to the right from the upper to the lower edge of the band. */
    private double drift(double stationMm, Point2 right, Point2 down) {
        Point2 rearward = frame.pose(stationMm, frame.xOverC(stationMm, extent.bandTopArcMm(stationMm)), 0)
                .rearward();
        return extent.band().depthMm() * rearward.dot(right) * Math.signum(rearward.dot(down));
    }

    private DevicePose pose(double fromMm, double toMm) {
        double middle = (fromMm + toMm) / 2;
        return frame.pose(middle, frame.xOverC(middle, extent.bandEdgeArcMm(middle)), 0);
    }

    private record Line(String text, double heightMm) {}

    /** Each line at its height, smaller where that makes it fit, else broken at its separators and then shortened. */
    private static List<Line> wrap(List<String> lines, double roomMm, int most) {
        List<Line> wrapped = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Line whole = fitted(lines.get(i), i == 0 ? TITLE_MM : LINE_MM, roomMm);
            if (whole.heightMm() >= BROKEN_MM) {
                wrapped.add(whole);
            } else {
                broken(lines.get(i), roomMm).forEach(part -> wrapped.add(shortened(part, roomMm)));
            }
        }
        return wrapped.size() <= most ? wrapped : wrapped.subList(0, most);
    }

    private static Line fitted(String text, double heightMm, double roomMm) {
        return new Line(text, heightMm * Math.min(1, roomMm / (WIDER * Lettering.widthMm(text, heightMm))));
    }

    private static Line shortened(String text, double roomMm) {
        Line line = fitted(text, BROKEN_MM, roomMm);
        return line.heightMm() >= SMALLEST_MM
                ? line
                : new Line(Lettering.fit(text, SMALLEST_MM, roomMm / WIDER), SMALLEST_MM);
    }

    private static List<String> broken(String line, double roomMm) {
        List<String> parts = new ArrayList<>();
        String current = "";
        for (String part : line.split(SEPARATOR, -1)) {
            String longer = current.isEmpty() ? part : current + SEPARATOR + part;
            if (!current.isEmpty() && WIDER * Lettering.widthMm(longer, BROKEN_MM) > roomMm) {
                parts.add(current);
                current = part;
            } else {
                current = longer;
            }
        }
        parts.add(current);
        return parts;
    }

    /** Direction from the left to the right end of the band. */
    private double readingDeg(double fromMm, double toMm) {
        Point2 a = frame.atArc(fromMm, extent.bandEdgeArcMm(fromMm));
        Point2 b = frame.atArc(toMm, extent.bandEdgeArcMm(toMm));
        Point2 along = frame.outboardSign() > 0 ? b.minus(a) : a.minus(b);
        return Math.toDegrees(Math.atan2(along.y(), along.x()));
    }

    private static List<Shape> arrows(Block block, double topMm, DevicePose pose) {
        Point2 inboard = pose.outboard().times(-1);
        boolean inboardRight = inboard.dot(block.right()) > 0;
        Point2 forward = block.down().times(-1);
        Point2 across = inboardRight ? block.right() : block.right().times(-1);
        List<Shape> shapes = new ArrayList<>();
        shapes.addAll(arrow(block.at(9, topMm + 12.6), forward, 12 * block.scale(), block.scale()));
        shapes.addAll(arrow(block.at(inboardRight ? 18 : 33, topMm + 5.6), across, 15 * block.scale(), block.scale()));
        shapes.add(word("FORWARD", block.at(9, topMm + 16.1), block));
        shapes.add(word("INBOARD", block.at(25.5, topMm + 10.6), block));
        return shapes;
    }

    private static Shape word(String text, Point2 at, Block block) {
        return new Shape.Text(Layer.TEXT, text, at, 1.8 * block.scale(), block.readingDeg(), Shape.Align.MIDDLE);
    }

    private static List<Shape> arrow(Point2 tail, Point2 direction, double lengthMm, double scale) {
        Point2 tip = tail.plus(direction.times(lengthMm));
        Point2 neck = tail.plus(direction.times(lengthMm - 4 * scale));
        Point2 side = new Point2(-direction.y(), direction.x()).times(1.4 * scale);
        return List.of(
                Shape.line(Layer.MARK, Pen.THIN, tail, neck),
                Shape.outline(Layer.MARK, Pen.FINE, Fill.SOLID, List.of(tip, neck.plus(side), neck.minus(side))));
    }

    /** "span stations 850 to 2,230 mm" without a thousands mark. */
    static String span(double fromMm, double toMm) {
        return String.format(
                Locale.ROOT, "span stations %s to %s mm", PieceMarks.stationText(fromMm), PieceMarks.stationText(toMm));
    }
}
