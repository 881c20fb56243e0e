package org.vanewright.engineering.solid;

import java.util.List;
import java.util.Optional;
import org.vanewright.engineering.geometry.Point2;

/**
 * A raised triangle on the base's centre line that points forward: the largest that fits ahead of the vane's middle, as
 * far forward as it goes; behind the middle only where there is no room ahead.
 *
 * @param foot where its sides meet the base, anticlockwise
 * @param top its upper edge, corner for corner
 */
record IndexMark(List<Point2> foot, List<Point2> top) {
    static final double HEIGHT_MM = 0.4;
    static final double LONGEST_MM = 3;
    static final double SHORTEST_MM = 1.2;
    /** From the mark to the base's bevel, a vane or a fillet. */
    static final double CLEARANCE_MM = 0.3;

    private static final double SIZE_STEP_MM = 0.3;
    private static final double PLACE_STEP_MM = 0.25;
    /** Width over length. */
    private static final double SLENDERNESS = 0.8;
    /** Each side leans in by this much of the length. */
    private static final double DRAFT = 0.08;

    /** The mark for a design, or nothing where even the smallest has no room. */
    static Optional<IndexMark> fitting(Dimensions d, Footprints footprints) {
        double middle = d.baseLength() / 2 - d.inset() - d.length() / 2 * Math.cos(d.toeIn());
        return largest(footprints, -d.baseLength() / 2, middle)
                .or(() -> largest(footprints, middle, d.baseLength() / 2));
    }

    private static Optional<IndexMark> largest(Footprints footprints, double fromX, double toX) {
        for (double length = LONGEST_MM; length > SHORTEST_MM - 1e-6; length -= SIZE_STEP_MM) {
            for (double x = fromX; x + length <= toX; x += PLACE_STEP_MM) {
                IndexMark mark = at(x, length);
                if (footprints.isFree(mark.foot(), CLEARANCE_MM)) {
                    return Optional.of(mark);
                }
            }
        }
        return Optional.empty();
    }

    private static IndexMark at(double tipX, double length) {
        Ring foot = Ring.mirrored(List.of(new Point2(tipX, 0), new Point2(tipX + length, SLENDERNESS * length / 2)));
        return new IndexMark(foot.points(), foot.offset(-DRAFT * length, false));
    }
}
