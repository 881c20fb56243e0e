package org.vanewright.engineering.solid;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.geometry.Point2;

/**
 * A closed outline, mirror-symmetric about the x axis, anticlockwise. It starts at the front (smallest x), runs
 * rearward along negative y and comes back along positive y.
 *
 * @param points the corners
 * @param sources for each corner, its index in the half outline it came from
 * @param rearEdge index of the corner where the rearmost edge begins; {@link MeshBuilder#NO_EDGE} where the outline
 *     ends in a single point
 */
record Ring(List<Point2> points, List<Integer> sources, int rearEdge) {
    Ring {
        points = List.copyOf(points);
        sources = List.copyOf(sources);
    }

    /** @param half corners from front to rear, y ≥ 0; a corner with y = 0 may only be the first or the last */
    static Ring mirrored(List<Point2> half) {
        List<Point2> points = new ArrayList<>();
        List<Integer> sources = new ArrayList<>();
        for (int i = 0; i < half.size(); i++) {
            points.add(new Point2(half.get(i).x(), -half.get(i).y()));
            sources.add(i);
        }
        for (int i = half.size() - 1; i >= 0; i--) {
            if (half.get(i).y() > 0) {
                points.add(half.get(i));
                sources.add(i);
            }
        }
        boolean pointed = half.get(half.size() - 1).y() == 0;
        return new Ring(points, sources, pointed ? MeshBuilder.NO_EDGE : half.size() - 1);
    }

    /**
     * How each corner moves when all edges move outward by one unit, staying parallel (a mitred offset).
     *
     * @param rearStays whether the rear edge keeps its place
     */
    List<Point2> mitres(boolean rearStays) {
        int n = points.size();
        List<Point2> mitres = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            int before = (i + n - 1) % n;
            Point2 a = outwardNormal(before);
            Point2 b = outwardNormal(i);
            if (rearStays && (before == rearEdge || i == rearEdge)) {
                Point2 moving = before == rearEdge ? b : a;
                Point2 along = before == rearEdge ? perpendicular(a) : perpendicular(b);
                mitres.add(along.times(1 / along.dot(moving)));
            } else {
                mitres.add(a.plus(b).times(1 / (1 + a.dot(b))));
            }
        }
        return mitres;
    }

    /** The outline with all edges moved outward by {@code distance} (inward where negative). */
    List<Point2> offset(double distance, boolean rearStays) {
        List<Point2> mitres = mitres(rearStays);
        List<Point2> moved = new ArrayList<>(points.size());
        for (int i = 0; i < points.size(); i++) {
            moved.add(points.get(i).plus(mitres.get(i).times(distance)));
        }
        return moved;
    }

    /** Whether every edge of {@code moved} still runs the way it does here and is at least {@code shortest} long. */
    boolean keepsEdges(List<Point2> moved, double shortest) {
        int n = points.size();
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            Point2 edge = points.get(j).minus(points.get(i));
            Point2 now = moved.get(j).minus(moved.get(i));
            if (edge.dot(now) < shortest * edge.norm()) {
                return false;
            }
        }
        return true;
    }

    private Point2 outwardNormal(int edge) {
        Point2 along = points.get((edge + 1) % points.size()).minus(points.get(edge));
        return new Point2(along.y(), -along.x()).times(1 / along.norm());
    }

    private static Point2 perpendicular(Point2 p) {
        return new Point2(-p.y(), p.x());
    }
}
