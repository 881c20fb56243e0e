package org.vanewright.engineering.section;

import java.util.Arrays;
import java.util.List;

/**
 * A section made of two parametric curves from the leading edge; equal to another when written by the same spec.
 *
 * <p>At the x of the leading edge {@link #atX} returns the leading edge itself. Just behind it one side of a cambered
 * section can lie slightly ahead of the leading edge and pass the same x twice; {@link #atX} then gives the rearmost
 * place.
 */
final class CurveSection implements Section {
    private static final double CLOSED_WITHIN = 1e-9;
    private static final double SAME_WITHIN = 1e-9;
    private static final int COMPARED_STATIONS = 96;

    private final SectionSpec spec;
    private final String designation;
    private final SkinSide upper;
    private final SkinSide lower;
    private final SectionExtremes extremes;
    private final double leadingEdgeRadius;

    CurveSection(
            SectionSpec spec,
            String designation,
            SkinSide upper,
            SkinSide lower,
            SectionExtremes extremes,
            double leadingEdgeRadius) {
        this.spec = spec;
        this.designation = designation;
        this.upper = upper;
        this.lower = lower;
        this.extremes = extremes;
        this.leadingEdgeRadius = leadingEdgeRadius;
    }

    @Override
    public String designation() {
        return designation;
    }

    @Override
    public boolean closedTrailingEdge() {
        SkinPoint u = upper.atArcLength(upper.length());
        SkinPoint l = lower.atArcLength(lower.length());
        return Math.hypot(u.x() - l.x(), u.y() - l.y()) <= CLOSED_WITHIN;
    }

    @Override
    public SkinPoint atX(SurfaceSide side, double xOverC) {
        return of(side).atX(xOverC);
    }

    @Override
    public SkinPoint atArcLength(SurfaceSide side, double arcLength) {
        return of(side).atArcLength(arcLength);
    }

    @Override
    public List<SkinPoint> nearArcLengths(SurfaceSide side, double[] arcLengths) {
        SkinSide skin = of(side);
        return Arrays.stream(arcLengths).mapToObj(skin::nearArcLength).toList();
    }

    @Override
    public double arcLength(SurfaceSide side) {
        return of(side).length();
    }

    @Override
    public double maximumX(SurfaceSide side) {
        return of(side).endX();
    }

    @Override
    public double maximumThickness() {
        return extremes.thickness();
    }

    @Override
    public double maximumCamber() {
        return extremes.camber();
    }

    @Override
    public double leadingEdgeRadius() {
        return leadingEdgeRadius;
    }

    @Override
    public boolean sameShapeAs(Section other) {
        return equals(other) || (sameSkin(other, SurfaceSide.UPPER) && sameSkin(other, SurfaceSide.LOWER));
    }

    private boolean sameSkin(Section other, SurfaceSide side) {
        double length = arcLength(side);
        double otherLength = other.arcLength(side);
        if (Math.abs(length - otherLength) > SAME_WITHIN) {
            return false;
        }
        for (int i = 0; i <= COMPARED_STATIONS; i++) {
            // squared spacing: the nose, where shapes differ first, gets more stations
            double fraction = (double) i * i / ((double) COMPARED_STATIONS * COMPARED_STATIONS);
            SkinPoint a = atArcLength(side, fraction * length);
            SkinPoint b = other.atArcLength(side, fraction * otherLength);
            if (Math.hypot(a.x() - b.x(), a.y() - b.y()) > SAME_WITHIN) {
                return false;
            }
        }
        return true;
    }

    private SkinSide of(SurfaceSide side) {
        return side == SurfaceSide.UPPER ? upper : lower;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CurveSection that && spec.equals(that.spec);
    }

    @Override
    public int hashCode() {
        return spec.hashCode();
    }

    @Override
    public String toString() {
        return designation;
    }
}
