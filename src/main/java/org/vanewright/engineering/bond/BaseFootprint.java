package org.vanewright.engineering.bond;

import java.util.List;
import org.vanewright.engineering.geometry.Point2;

/**
 * The bonded area of a base by its outline, and the rectangle that takes its place: as far across as the outline, with an
 * edge as long as gives the same largest stress under a moment, 6 I/(c b²), I about the middle of the area and c from there
 * to the farther edge.
 */
public final class BaseFootprint {
    private final List<Point2> outline;
    private final double areaMm2;
    private final Point2 centroid;

    /** @param outline closed, mm, anticlockwise, the first point not repeated; x along the base, y across it */
    public BaseFootprint(List<Point2> outline) {
        this.outline = List.copyOf(outline);
        double twice = 0;
        Point2 sum = Point2.ORIGIN;
        for (int i = 0; i < outline.size(); i++) {
            Point2 a = outline.get(i);
            Point2 b = outline.get((i + 1) % outline.size());
            double cross = a.cross(b);
            twice += cross;
            sum = sum.plus(a.plus(b).times(cross));
        }
        this.areaMm2 = twice / 2;
        this.centroid = sum.times(1 / (3 * twice));
    }

    public double areaMm2() {
        return areaMm2;
    }

    /** Tipped sideways, over an edge along the base. */
    public TapedBase across(double tapeThicknessMm) {
        return base(
                new Extent(outline.stream().mapToDouble(Point2::y).toArray(), centroid.y()), false, tapeThicknessMm);
    }

    /** Tipped forward or back, over an end of the base. */
    public TapedBase along(double tapeThicknessMm) {
        return base(new Extent(outline.stream().mapToDouble(Point2::x).toArray(), centroid.x()), true, tapeThicknessMm);
    }

    private TapedBase base(Extent way, boolean along, double tapeThicknessMm) {
        double across = way.high - way.low;
        double far = Math.max(way.high - way.middle, way.middle - way.low);
        return new TapedBase(6 * secondMoment(along) / (far * across * across), across, tapeThicknessMm);
    }

    /** ∫ y² dA, or ∫ x² dA, about the middle of the area; mm⁴. */
    private double secondMoment(boolean along) {
        double sum = 0;
        for (int i = 0; i < outline.size(); i++) {
            Point2 a = outline.get(i).minus(centroid);
            Point2 b = outline.get((i + 1) % outline.size()).minus(centroid);
            double u = along ? a.x() : a.y();
            double v = along ? b.x() : b.y();
            sum += (u * u + u * v + v * v) * a.cross(b);
        }
        return sum / 12;
    }

    /** How far an outline reaches one way. */
    private static final class Extent {
        final double low;
        final double high;
        final double middle;

        Extent(double[] values, double middle) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (double value : values) {
                least = Math.min(least, value);
                most = Math.max(most, value);
            }
            this.low = least;
            this.high = most;
            this.middle = middle;
        }
    }
}
