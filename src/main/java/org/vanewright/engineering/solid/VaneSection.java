package org.vanewright.engineering.solid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.solid.DeviceDesign.EdgeTreatment;

/**
 * Half of the vane's horizontal section: a front part that moves with the leading edge, a rear part that stays with the
 * trailing edge, straight sides between. x rearward from the respective edge, y half the local thickness.
 *
 * @param front from the leading edge rearward, x ≥ 0
 * @param rear towards the trailing edge, x ≤ 0
 */
record VaneSection(List<Point2> front, List<Point2> rear) {
    /** Length of a wedge in thicknesses. */
    static final double WEDGE_LENGTH = 2;
    /** Thickness of a wedge's flat in thicknesses of the vane. */
    static final double WEDGE_FLAT = 0.25;
    /** The parallel sides never get shorter than this. */
    static final double SHORTEST_SIDE = 0.4;

    static VaneSection of(Dimensions d) {
        List<Point2> front = edge(d.leadingEdge(), d.thickness(), d.tolerance() / 2);
        List<Point2> rear = new ArrayList<>();
        if (d.footed()) {
            rear.add(new Point2(-(d.footWidth() - d.thickness()) / 2 / Math.tan(d.footAngle()), d.thickness() / 2));
            rear.add(new Point2(0, d.footWidth() / 2));
        } else {
            edge(d.trailingEdge(), d.thickness(), d.tolerance() / 2).forEach(p -> rear.add(new Point2(-p.x(), p.y())));
            Collections.reverse(rear);
        }
        return new VaneSection(front, rear);
    }

    private static List<Point2> edge(EdgeTreatment treatment, double thickness, double tolerance) {
        double half = thickness / 2;
        return switch (treatment) {
            case SQUARE -> List.of(new Point2(0, half));
            case WEDGE -> List.of(new Point2(0, WEDGE_FLAT * half), new Point2(WEDGE_LENGTH * thickness, half));
            case ROUNDED -> halfRound(half, tolerance);
        };
    }

    private static List<Point2> halfRound(double radius, double tolerance) {
        int n = Math.max(2, Arcs.segments(radius, Math.PI / 2, tolerance));
        List<Point2> arc = new ArrayList<>();
        arc.add(Point2.ORIGIN);
        for (int i = 1; i < n; i++) {
            double angle = Math.PI / 2 * i / n;
            arc.add(new Point2(radius * (1 - Math.cos(angle)), radius * Math.sin(angle)));
        }
        arc.add(new Point2(radius, radius));
        return arc;
    }

    double frontLength() {
        return front.get(front.size() - 1).x();
    }

    double rearLength() {
        return -rear.get(0).x();
    }

    /** The shortest chord that has room for both edges and a little of the parallel sides. */
    double shortestChord() {
        return frontLength() + rearLength() + SHORTEST_SIDE;
    }

    /** The closed section of a given chord, leading edge at x = 0. */
    Ring ring(double chord) {
        List<Point2> half = new ArrayList<>(front);
        rear.forEach(p -> half.add(new Point2(p.x() + chord, p.y())));
        return Ring.mirrored(half);
    }
}
