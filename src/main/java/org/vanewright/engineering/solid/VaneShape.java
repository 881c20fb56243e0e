package org.vanewright.engineering.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;
import org.vanewright.engineering.geometry.Point2;

/**
 * A vane as a stack of level sections. All sections have the same edges in the same directions, only their lengths
 * change with height; so the faces between two levels are plane, and no two of them can meet except at shared edges.
 * Own frame: root's leading edge at the origin, x rearward, z up from the base's upper face.
 */
final class VaneShape {
    private final Dimensions d;
    private final VaneSection section;
    private final SideOutline side;
    private final Ring root;
    private final List<Point2> mitres;

    VaneShape(Dimensions d) {
        this.d = d;
        section = VaneSection.of(d);
        side = side(d, section);
        root = section.ring(d.length());
        mitres = root.mitres(d.flush());
    }

    private static SideOutline side(Dimensions d, VaneSection section) {
        double pointed = d.length() - section.shortestChord();
        return switch (d.planform()) {
            case RECTANGULAR -> SideOutline.straight(d.height(), 0, d.tipRadius());
            case SWEPT_TRAPEZIUM -> SideOutline.straight(d.height(), d.length() - d.tipLength(), d.tipRadius());
            // a point cannot be printed: the tip ends in the shortest chord
            case TRIANGULAR -> SideOutline.straight(d.height(), pointed, 0);
            case OGIVAL -> SideOutline.ogive(d.height(), pointed);
        };
    }

    SideOutline side() {
        return side;
    }

    VaneSection section() {
        return section;
    }

    /** Edge of every section that lies in the rear plane. */
    int rearEdge() {
        return root.rearEdge();
    }

    /** Heights of the sections, from 0 to the height of the vane. */
    List<Double> levels() {
        NavigableSet<Double> wanted = new TreeSet<>();
        double tolerance = d.tolerance() / 2;
        if (d.fillet() > 0) {
            int n = Arcs.segments(d.fillet(), Math.PI / 2, tolerance);
            for (int i = 1; i < n; i++) {
                wanted.add(d.fillet() * (1 - Math.cos(Math.PI / 2 * i / n)));
            }
            wanted.add(d.fillet());
        }
        wanted.addAll(side.levels(tolerance));
        return spaced(wanted, tolerance);
    }

    /** Drops levels that nearly coincide, but neither the first nor the last. */
    private static List<Double> spaced(NavigableSet<Double> wanted, double least) {
        List<Double> kept = new ArrayList<>();
        double top = wanted.last();
        for (double z : wanted) {
            boolean clear = kept.isEmpty() || z - kept.get(kept.size() - 1) >= least;
            if (z == top || (clear && top - z >= least)) {
                kept.add(z);
            }
        }
        return kept;
    }

    /** Outward growth of the section at a height, from the fillet. */
    double filletOffset(double z) {
        double below = d.fillet() - z;
        return below <= 0 ? 0 : d.fillet() - Math.sqrt(Math.max(0, d.fillet() * d.fillet() - below * below));
    }

    /** The closed section at a height, anticlockwise. */
    List<Point2> at(double z) {
        double advance = side.leadingEdgeX(z);
        double growth = filletOffset(z);
        List<Point2> ring = new ArrayList<>();
        for (int i = 0; i < mitres.size(); i++) {
            boolean moves = root.sources().get(i) < section.front().size();
            Point2 p = root.points().get(i).plus(mitres.get(i).times(growth));
            ring.add(moves ? new Point2(p.x() + advance, p.y()) : p);
        }
        return ring;
    }

    /** Whether no section loses an edge to its fillet or to a chord too short for its edge treatments. */
    boolean isSound() {
        return levels().stream().allMatch(z -> root.keepsEdges(at(z), 1e-3));
    }
}
