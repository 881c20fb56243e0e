package org.vanewright.engineering.section;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.vanewright.engineering.geometry.Point2;

/** Straight pieces that follow a section's outline, for drawings. */
public final class SectionOutline {
    private static final int FIRST_PIECES = 8;
    private static final int MAX_DEPTH = 16;
    /** The probes can miss the greatest distance by a little. */
    private static final double SAFETY = 0.9;

    private static final double[] PROBES = {0.25, 0.5, 0.75};

    private SectionOutline() {}

    /**
     * The closed outline, trailing edge → upper → leading edge → lower → trailing edge, anticlockwise; the first point
     * is not repeated at the end.
     *
     * @param tolerance greatest distance between outline and straight piece, in chords, at least 1e-9
     * @throws IllegalArgumentException for a smaller or not finite tolerance
     */
    public static List<Point2> points(Section section, double tolerance) {
        if (!(tolerance >= 1e-9) || !Double.isFinite(tolerance)) {
            throw new IllegalArgumentException("tolerance in chords must be at least 1e-9: " + tolerance);
        }
        List<Point2> outline = side(section, SurfaceSide.UPPER, tolerance);
        Collections.reverse(outline);
        List<Point2> lower = side(section, SurfaceSide.LOWER, tolerance);
        int end = section.closedTrailingEdge() ? lower.size() - 1 : lower.size();
        outline.addAll(lower.subList(1, end));
        return List.copyOf(outline);
    }

    private static List<Point2> side(Section section, SurfaceSide side, double tolerance) {
        double length = section.arcLength(side);
        List<Point2> points = new ArrayList<>();
        points.add(at(section, side, 0));
        for (int i = 0; i < FIRST_PIECES; i++) {
            double from = length * i / FIRST_PIECES;
            double to = length * (i + 1) / FIRST_PIECES;
            refine(points, section, side, new double[] {from, to}, tolerance, 0);
        }
        return points;
    }

    /** Appends the points after {@code span[0]} up to {@code span[1]}. */
    private static void refine(
            List<Point2> points, Section section, SurfaceSide side, double[] span, double tolerance, int depth) {
        Point2 start = points.get(points.size() - 1);
        Point2 end = at(section, side, span[1]);
        if (depth < MAX_DEPTH && sag(section, side, span, start, end) > SAFETY * tolerance) {
            double middle = 0.5 * (span[0] + span[1]);
            refine(points, section, side, new double[] {span[0], middle}, tolerance, depth + 1);
            refine(points, section, side, new double[] {middle, span[1]}, tolerance, depth + 1);
        } else {
            points.add(end);
        }
    }

    private static double sag(Section section, SurfaceSide side, double[] span, Point2 start, Point2 end) {
        Point2 along = end.minus(start);
        double greatest = 0;
        for (double probe : PROBES) {
            Point2 p = at(section, side, span[0] + probe * (span[1] - span[0]));
            greatest = Math.max(greatest, Math.abs(along.cross(p.minus(start))) / along.norm());
        }
        return greatest;
    }

    private static Point2 at(Section section, SurfaceSide side, double arc) {
        SkinPoint p = section.atArcLength(side, arc);
        return new Point2(p.x(), p.y());
    }
}
