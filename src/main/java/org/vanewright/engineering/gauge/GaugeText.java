package org.vanewright.engineering.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.vanewright.engineering.drawing.GlyphOutlines;
import org.vanewright.engineering.drawing.Lettering;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.unroll.FlatSkin;

/** Row, hand and revision in raised letters, where the shell has most room: ahead of the slots, or on the hook. */
final class GaugeText {
    private static final double MARGIN_MM = 3;
    private static final double LARGEST_MM = 6;
    private static final double SMALLEST_MM = 2.2;
    private static final double LINE_PER_CAP = 1.55;

    private final RowGauges row;
    private final Gauge gauge;
    private final int revision;

    GaugeText(RowGauges row, Gauge gauge, int revision) {
        this.row = row;
        this.gauge = gauge;
        this.revision = revision;
    }

    /** A rectangle of the flat shell, by s. */
    private record Room(double fromS, double toS, boolean onHook) {
        double depth() {
            return toS - fromS;
        }
    }

    /** What is raised, inside the body; empty where letters would be too small to print. */
    Geometry on(GaugeOutline outline) {
        List<Room> rooms = List.of(
                new Room(2 * MARGIN_MM, outline.slotFrontMm() - MARGIN_MM, false),
                new Room(-row.settings().wrapMm() + MARGIN_MM, -MARGIN_MM, true));
        double width = gauge.inboardMm() + gauge.outboardMm() - 2 * MARGIN_MM;
        Room best = rooms.get(0);
        List<String> bestLines = List.of();
        double bestCap = 0;
        for (Room room : rooms) {
            for (List<String> lines : arrangements()) {
                double cap = cap(lines, width, room.depth());
                if (cap > bestCap + 0.5) {
                    best = room;
                    bestLines = lines;
                    bestCap = cap;
                }
            }
        }
        return bestCap < SMALLEST_MM ? GaugeOutline.PLANE.createPolygon() : raised(bestLines, bestCap, best, outline);
    }

    private List<List<String>> arrangements() {
        String hand =
                String.format(Locale.ROOT, "ROW %d %s", row.row() + 1, row.wing() == Wing.LEFT ? "LEFT" : "RIGHT");
        String side = row.side().name();
        String rev = "REV " + revision;
        String number = gauge.number() + "/" + gauge.of();
        String range = String.format(Locale.ROOT, "%.0f-%.0f", gauge.fromMm(), gauge.toMm());
        return List.of(
                List.of(hand, side + " " + rev, number + " " + range),
                List.of(hand + " " + side, rev + " " + number, range),
                List.of(hand + " " + side, rev + " " + number + " " + range),
                List.of(hand, rev));
    }

    private static double cap(List<String> lines, double width, double depth) {
        double widest =
                lines.stream().mapToDouble(l -> Lettering.widthMm(l, 1)).max().orElseThrow();
        double rows = 1 + (lines.size() - 1) * LINE_PER_CAP;
        return Math.min(LARGEST_MM, Math.min(width / widest, depth / rows));
    }

    private Geometry raised(List<String> lines, double cap, Room room, GaugeOutline outline) {
        double middleV = (gauge.outboardMm() - gauge.inboardMm()) / 2;
        double middleS = (room.fromS() + room.toS()) / 2;
        double height = cap * (1 + (lines.size() - 1) * LINE_PER_CAP);
        List<Geometry> letters = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            double left = -Lettering.widthMm(lines.get(i), cap) / 2;
            double base = height / 2 - cap - i * cap * LINE_PER_CAP;
            for (List<List<Point2>> letter : GlyphOutlines.of(lines.get(i), cap)) {
                letters.add(letter(letter, left, base, room, middleS, middleV));
            }
        }
        Geometry all = UnaryUnionNG.union(letters, GaugeOutline.PLANE, GaugeOutline.GRID);
        Geometry inside = outline.body().buffer(-1);
        return OverlayNG.overlay(all, inside, OverlayNG.INTERSECTION, GaugeOutline.GRID);
    }

    /** Read from outside with the leading edge up; on the hook it is the other side that one looks at. */
    private Geometry letter(
            List<List<Point2>> rings, double left, double base, Room room, double middleS, double middleV) {
        boolean turnedOver = FlatSkin.mirroredOutside(row.side(), row.wing() == Wing.LEFT);
        double across = (turnedOver ? -1 : 1) * (room.onHook() ? -1 : 1);
        double down = room.onHook() ? 1 : -1;
        Geometry ink = GaugeOutline.PLANE.createPolygon();
        for (List<Point2> ring : rings) {
            List<Point2> placed = new ArrayList<>();
            for (Point2 p : ring) {
                placed.add(new Point2(middleS + down * (base + p.y()), middleV + across * (left + p.x())));
            }
            ink = OverlayNG.overlay(ink, GaugeOutline.ring(placed), OverlayNG.SYMDIFFERENCE, GaugeOutline.GRID);
        }
        return ink;
    }
}
