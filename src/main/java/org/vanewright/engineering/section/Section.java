package org.vanewright.engineering.section;

import java.util.Arrays;
import java.util.List;

/**
 * An aerofoil section with unit chord: leading edge at (0, 0), x rearward, y up. Immutable.
 *
 * <p>A station on the skin is set out by arc length from the leading edge, never by x: that is what a tape measure
 * laid on a wing reads.
 */
public interface Section {
    /** As people write it, such as {@code NACA 2412} or the title of the coordinate file. */
    String designation();

    /** True when upper and lower skin meet in one point at the trailing edge. */
    boolean closedTrailingEdge();

    /**
     * The skin at a chordwise position.
     *
     * @param xOverC from 0 to {@link #maximumX}
     * @throws IllegalArgumentException outside that range or not finite
     */
    SkinPoint atX(SurfaceSide side, double xOverC);

    /**
     * The skin at a distance along it from the leading edge.
     *
     * @param arcLength from 0 to {@link #arcLength}
     * @throws IllegalArgumentException outside that range or not finite
     */
    SkinPoint atArcLength(SurfaceSide side, double arcLength);

    /**
     * The skin near many distances along it, for panels: each place is exact, with the arc length that belongs to it, yet
     * lies only about as far along as asked, to a fiftieth of the length. Both ends of the side are met exactly.
     *
     * @param arcLengths from 0 to {@link #arcLength}
     * @throws IllegalArgumentException outside that range or not finite
     */
    default List<SkinPoint> nearArcLengths(SurfaceSide side, double[] arcLengths) {
        return Arrays.stream(arcLengths).mapToObj(arc -> atArcLength(side, arc)).toList();
    }

    /** Length of one side from leading to trailing edge, in chords. */
    double arcLength(SurfaceSide side);

    /** x of the trailing edge of one side; 1 to within the blunt edge's slant. */
    double maximumX(SurfaceSide side);

    /** Largest distance between the sides, in chords. */
    double maximumThickness();

    /** Largest height of the mean line, in chords; 0 for a symmetric section. */
    double maximumCamber();

    /** In chords. */
    double leadingEdgeRadius();

    /** True when both have the same skin to within 1e-9 chord everywhere, so that a panel between them is developable. */
    boolean sameShapeAs(Section other);
}
