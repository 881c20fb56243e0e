package org.vanewright.engineering.section;

import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.Checks;

/** A section through coordinates as given: neither turned nor rescaled. */
final class GivenCoordinates {
    private static final String FIELD = "coordinates";
    private static final double LARGEST = 1e4;
    private static final double SHORTEST_CHORD = 1e-3;
    private static final double LEVEL_WITHIN = 1e-12;

    private GivenCoordinates() {}

    static Section section(SectionSpec spec, List<List<Double>> coordinates) {
        Point2[] points = points(coordinates);
        checkOutline(points);
        SplinedOutline outline = SplinedOutline.through(points);
        CurvePoint nose = outline.spline().at(outline.leadingEdgeAt());
        SkinSide upper = outline.side(SurfaceSide.UPPER);
        SkinSide lower = outline.side(SurfaceSide.LOWER);
        String title = spec.title();
        List<List<Double>> kept = coordinates.stream().map(List::copyOf).toList();
        return new CurveSection(
                new SectionSpec(null, null, kept, title),
                title == null || title.isBlank() ? "coordinates" : title.strip(),
                upper,
                lower,
                extremes(outline, upper, lower),
                1 / Math.abs(nose.curvature()));
    }

    private static Point2[] points(List<List<Double>> coordinates) {
        Checks checks = new Checks();
        int n = coordinates.size();
        boolean counted = checks.require(
                n >= OutlineChecks.FEWEST_POINTS && n <= OutlineChecks.MOST_POINTS,
                FIELD,
                n + " points",
                OutlineChecks.FEWEST_POINTS + " to " + OutlineChecks.MOST_POINTS + " points");
        Point2[] points = new Point2[counted ? n : 0];
        for (int i = 0; i < points.length; i++) {
            points[i] = point(checks, FIELD + "[" + i + "]", coordinates.get(i));
            if (i > 0 && checks.isClean()) {
                checks.require(
                        !points[i].equals(points[i - 1]),
                        FIELD + "[" + i + "]",
                        coordinates.get(i),
                        "a point other than the one before it");
            }
        }
        checks.throwIfAny();
        return points;
    }

    private static Point2 point(Checks checks, String field, @Nullable List<Double> pair) {
        if (pair == null || pair.size() != 2) {
            checks.require(false, field, pair, "two numbers [x, y]");
            return Point2.ORIGIN;
        }
        boolean x = checks.range(field + "[0]", pair.get(0), -LARGEST, LARGEST, "");
        boolean y = checks.range(field + "[1]", pair.get(1), -LARGEST, LARGEST, "");
        return x && y ? new Point2(pair.get(0) + 0.0, pair.get(1) + 0.0) : Point2.ORIGIN;
    }

    private static void checkOutline(Point2[] points) {
        Checks checks = new Checks();
        int last = points.length - 1;
        Point2 trailing = points[0].plus(points[last]).times(0.5);
        int nose = SplinedOutline.farthestFrom(trailing, points);
        double chord = points[nose].distanceTo(trailing);
        checks.require(chord >= SHORTEST_CHORD, FIELD, "chord " + chord, "a chord of at least " + SHORTEST_CHORD);
        checks.require(
                points[0].distanceTo(points[last]) <= OutlineChecks.WIDEST_TRAILING_EDGE * chord,
                FIELD,
                "first and last point " + points[0].distanceTo(points[last]) + " apart",
                "one loop that starts and ends at the trailing edge, at most a quarter of the chord wide there");
        checks.require(
                points[nose].x() < trailing.x(),
                FIELD,
                "leading edge at x = " + points[nose].x(),
                "a leading edge ahead of the trailing edge: x runs rearward");
        checks.throwIfAny();
        OptionalInt crossing = OutlineChecks.selfCrossing(points);
        crossing.ifPresent(i -> checks.require(
                false, FIELD + "[" + i + "]", points[i], "an outline that does not cross or touch itself"));
        checks.throwIfAny();
        checks.require(
                OutlineChecks.signedArea(points) > 0,
                FIELD,
                "points run clockwise",
                "the order trailing edge, upper side, leading edge, lower side, trailing edge");
        checks.throwIfAny();
    }

    /** Thickness and camber square to the chord, which need not lie along x. */
    private static SectionExtremes extremes(SplinedOutline outline, SkinSide upper, SkinSide lower) {
        Point2 nose = outline.leadingEdge();
        Point2 chord = outline.trailingEdge().minus(nose);
        double angle = Math.atan2(chord.y(), chord.x());
        if (Math.abs(angle) <= LEVEL_WITHIN) {
            return SectionExtremes.squareToChord(upper, lower);
        }
        return SectionExtremes.squareToChord(
                new SkinSide(SurfaceSide.UPPER, new LevelCurve(upper.curve(), nose, -angle)),
                new SkinSide(SurfaceSide.LOWER, new LevelCurve(lower.curve(), nose, -angle)));
    }
}
