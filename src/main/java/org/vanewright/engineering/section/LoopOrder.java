package org.vanewright.engineering.section;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.InvalidInputException;

/** Brings the points of a file, one loop or two lists, into the order trailing edge → upper → leading edge → lower. */
final class LoopOrder {
    /** A step rearward to forward (or back) of this share of the chord starts the second list. */
    private static final double JUMP = 0.6;
    /** Neighbours closer than this share of the chord are one point. */
    private static final double SAME_POINT = 1e-7;
    /** Points of a blunt trailing edge lie within this share of the chord of the rearmost. */
    private static final double TRAILING_EDGE_DEPTH = 0.01;

    private LoopOrder() {}

    /** @throws InvalidInputException where the points are not one loop or two lists */
    static List<FilePoint> loop(List<List<FilePoint>> blocks) {
        List<List<FilePoint>> parts = withoutCounts(blocks);
        int points = parts.stream().mapToInt(List::size).sum();
        if (points < OutlineChecks.FEWEST_POINTS) {
            throw CoordinateFile.refused(points + " points", "file: at least 11 points, two numbers a line");
        }
        double chord = chord(parts);
        if (!(chord > 0)) {
            throw CoordinateFile.refused("every x the same", "file: points from leading to trailing edge");
        }
        if (parts.size() == 1) {
            parts = atJump(parts.get(0), chord);
        }
        if (parts.size() > 2) {
            throw new InvalidInputException(parts.get(2)
                    .get(0)
                    .line()
                    .problem("one loop or two lists are wanted; a blank line starts a third list here"));
        }
        List<FilePoint> loop = parts.size() == 2
                ? joined(parts.get(0), parts.get(1))
                : fromTrailingEdge(deduplicated(parts.get(0), chord), chord);
        return upperFirst(checkedCount(deduplicated(loop, chord)));
    }

    /** Takes away a line with the point counts of two lists and cuts the lists by it. */
    private static List<List<FilePoint>> withoutCounts(List<List<FilePoint>> blocks) {
        List<FilePoint> all = blocks.stream().flatMap(List::stream).toList();
        if (all.isEmpty()) {
            return blocks;
        }
        FilePoint first = all.get(0);
        List<FilePoint> rest = all.subList(1, all.size());
        if (!looksLikeCounts(first, rest, blocks.get(0).size() == 1)) {
            return blocks;
        }
        double upper = first.at().x();
        double lower = first.at().y();
        if (upper + lower != rest.size()) {
            throw new InvalidInputException(first.line()
                    .problem("these point counts ask for " + (long) (upper + lower) + " points, the file holds "
                            + rest.size()));
        }
        return List.of(rest.subList(0, (int) upper), rest.subList((int) upper, rest.size()));
    }

    private static boolean looksLikeCounts(FilePoint first, List<FilePoint> rest, boolean standsAlone) {
        boolean beyondChord = rest.stream().allMatch(p -> Math.abs(p.x()) < 2);
        boolean fits = first.x() + first.at().y() == rest.size();
        return couldBeCounts(first.at()) && (standsAlone || fits || beyondChord);
    }

    /** True for two whole numbers of at least 2. */
    static boolean couldBeCounts(Point2 pair) {
        return pair.x() == Math.rint(pair.x()) && pair.y() == Math.rint(pair.y()) && pair.x() >= 2 && pair.y() >= 2;
    }

    /** Two lists without a blank line between them show as one step across most of the chord. */
    private static List<List<FilePoint>> atJump(List<FilePoint> points, double chord) {
        List<List<FilePoint>> parts = new ArrayList<>();
        int start = 0;
        for (int i = 1; i < points.size(); i++) {
            if (Math.abs(points.get(i).x() - points.get(i - 1).x()) > JUMP * chord) {
                parts.add(points.subList(start, i));
                start = i;
            }
        }
        parts.add(points.subList(start, points.size()));
        return parts;
    }

    /** One list forward, the other rearward, whichever way each was written. */
    private static List<FilePoint> joined(List<FilePoint> first, List<FilePoint> second) {
        List<FilePoint> forward = runsRearward(first) ? FilePoint.reversed(first) : first;
        List<FilePoint> rearward = runsRearward(second) ? second : FilePoint.reversed(second);
        return Stream.concat(forward.stream(), rearward.stream()).toList();
    }

    private static boolean runsRearward(List<FilePoint> points) {
        return points.get(0).x() < points.get(points.size() - 1).x();
    }

    /** Turns a loop that starts elsewhere so that it starts and ends at the trailing edge. */
    private static List<FilePoint> fromTrailingEdge(List<FilePoint> points, double chord) {
        int n = points.size();
        double rear = points.stream().mapToDouble(FilePoint::x).max().orElseThrow();
        double depth = TRAILING_EDGE_DEPTH * chord;
        if (points.get(0).x() >= rear - depth && points.get(n - 1).x() >= rear - depth) {
            return points;
        }
        if (points.get(0).at().distanceTo(points.get(n - 1).at()) > OutlineChecks.WIDEST_TRAILING_EDGE * chord) {
            throw new InvalidInputException(points.get(n - 1)
                    .line()
                    .problem("the last point must come back to the first (line "
                            + points.get(0).line().number() + "): one loop around the whole section"));
        }
        return turned(isSame(points.get(0), points.get(n - 1), chord) ? points.subList(0, n - 1) : points, rear, chord);
    }

    /** The ring from its rearmost point round to it, or from one corner of a blunt trailing edge to the other. */
    private static List<FilePoint> turned(List<FilePoint> ring, double rear, double chord) {
        int size = ring.size();
        int last = 0;
        for (int i = 0; i < size; i++) {
            last = ring.get(i).x() > ring.get(last).x() ? i : last;
        }
        boolean bluntAfter = ring.get((last + 1) % size).x() >= rear - 1e-3 * chord;
        boolean bluntBefore = ring.get((last + size - 1) % size).x() >= rear - 1e-3 * chord;
        int start = bluntAfter ? last + 1 : last;
        List<FilePoint> turned = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            turned.add(ring.get((start + i) % size));
        }
        if (!bluntAfter && !bluntBefore) {
            turned.add(turned.get(0));
        }
        return turned;
    }

    private static List<FilePoint> deduplicated(List<FilePoint> points, double chord) {
        List<FilePoint> kept = new ArrayList<>();
        for (FilePoint p : points) {
            if (kept.isEmpty() || !isSame(p, kept.get(kept.size() - 1), chord)) {
                kept.add(p);
            }
        }
        return kept;
    }

    private static boolean isSame(FilePoint a, FilePoint b, double chord) {
        return a.at().distanceTo(b.at()) <= SAME_POINT * chord;
    }

    private static List<FilePoint> checkedCount(List<FilePoint> loop) {
        if (loop.size() < OutlineChecks.FEWEST_POINTS) {
            throw CoordinateFile.refused(
                    loop.size() + " different points", "file: at least 11 points, two numbers a line");
        }
        if (loop.size() > OutlineChecks.MOST_POINTS) {
            throw new InvalidInputException(
                    loop.get(OutlineChecks.MOST_POINTS).line().problem("at most 2,000 points"));
        }
        return loop;
    }

    private static List<FilePoint> upperFirst(List<FilePoint> loop) {
        Point2[] points = loop.stream().map(FilePoint::at).toArray(Point2[]::new);
        return OutlineChecks.signedArea(points) < 0 ? FilePoint.reversed(loop) : loop;
    }

    private static double chord(List<List<FilePoint>> parts) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (List<FilePoint> part : parts) {
            for (FilePoint p : part) {
                least = Math.min(least, p.x());
                most = Math.max(most, p.x());
            }
        }
        return most - least;
    }
}
