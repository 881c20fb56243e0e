package org.vanewright.engineering.placement;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;

/** Finds bases that overlap on the skin, whatever rows they belong to. */
final class OverlapCheck {
    /** Bases may touch; an overlap thinner than a printed line is not one. */
    private static final double TOUCH_MM = 0.01;

    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    private OverlapCheck() {}

    private record Covered(Station station, Polygon base) {}

    /**
     * @throws org.vanewright.engineering.input.InvalidInputException naming the later row of each two in conflict, with
     *     the first place where they are
     */
    static void check(List<RowPlan> plans, WingSkin skin, List<Station> stations) {
        Map<Integer, RowPlan> rows = Placer.byIndex(plans);
        Checks checks = new Checks();
        STRtree tree = new STRtree();
        List<Covered> covered = new ArrayList<>();
        for (Station station : stations) {
            Covered c = new Covered(station, base(rows, skin, station));
            covered.add(c);
            tree.insert(c.base().getEnvelopeInternal(), c);
        }
        Set<Set<Integer>> reported = new HashSet<>();
        for (Covered c : covered) {
            for (Object other : tree.query(c.base().getEnvelopeInternal())) {
                Covered o = (Covered) other;
                Set<Integer> both =
                        new HashSet<>(List.of(c.station().row(), o.station().row()));
                if (!reported.contains(both) && collide(c, o)) {
                    reported.add(both);
                    checks.add(problem(rows, c.station(), o.station()));
                }
            }
        }
        checks.throwIfAny();
    }

    /** Whatever they share counts: one base may lie wholly on another. */
    private static boolean collide(Covered a, Covered b) {
        Station s = a.station();
        Station t = b.station();
        boolean once =
                s.wing() == t.wing() && s.side() == t.side() && s.panel() == t.panel() && s.number() < t.number();
        // Few come so near that it matters how thin an overlap is, and shrinking takes long.
        return once && a.base().intersects(b.base()) && shrunk(a.base()).intersects(shrunk(b.base()));
    }

    private static FieldProblem problem(Map<Integer, RowPlan> rows, Station s, Station t) {
        Station later = s.row() > t.row() ? s : t;
        return new FieldProblem(
                "rows[" + later.row() + "]",
                Placer.row(rows, later).name(),
                String.format(
                        Locale.ROOT,
                        "bases that do not overlap; devices %d and %d of the %s wing do, at span station %.0f mm",
                        s.number(),
                        t.number(),
                        s.wing().name().toLowerCase(Locale.ROOT),
                        s.stationMm()));
    }

    private static Polygon base(Map<Integer, RowPlan> rows, WingSkin skin, Station station) {
        List<Point2> outline =
                skin.onSheet(station, Placer.row(rows, station).footprint().baseOutline());
        Coordinate[] ring = new Coordinate[outline.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point2 p = outline.get(i % outline.size());
            ring[i] = new Coordinate(p.x(), p.y());
        }
        return GEOMETRY.createPolygon(ring);
    }

    private static Polygon shrunk(Polygon polygon) {
        return polygon.buffer(-TOUCH_MM / 2) instanceof Polygon shrunk && !shrunk.isEmpty() ? shrunk : polygon;
    }
}
