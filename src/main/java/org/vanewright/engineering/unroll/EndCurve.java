package org.vanewright.engineering.unroll;

import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SkinPoint;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * One side of an end section. Coordinates given by a person need not have their leading edge at (0, 0); they are taken
 * as given, and chord fraction 0 is the leading edge.
 *
 * <p>For blended panels also over a parameter u that is smooth around a rounded nose: u² is the chord fraction. A
 * cambered section's skin may reach ahead of its leading edge before it comes back to x = 0; that part, the brow, has u
 * from −1 to 0 in proportion to the arc.
 */
final class EndCurve {
    /** A little way behind the leading edge, to find whether the skin reached ahead of it first. */
    private static final double JUST_BEHIND = 1e-9;

    /** A rounded nose is back at {@link #JUST_BEHIND} within this arc. */
    private static final double SHORTEST_BROW = 1e-4;

    private final Section section;
    private final SurfaceSide side;
    private final SkinPoint leadingEdge;
    private final double maximumX;
    private final double length;
    private final double brow;

    EndCurve(Section section, SurfaceSide side) {
        this.section = section;
        this.side = side;
        this.leadingEdge = section.atArcLength(side, 0);
        this.maximumX = section.maximumX(side);
        this.length = section.arcLength(side);
        double arc = section.atX(side, frontX() + JUST_BEHIND).arcLength();
        this.brow = arc > SHORTEST_BROW ? arc : 0;
    }

    /** In chords. */
    double length() {
        return length;
    }

    double maximumX() {
        return maximumX;
    }

    boolean hasBrow() {
        return brow > 0;
    }

    /** Where chord fractions begin: nothing of the section lies between the leading edge and there. */
    double frontX() {
        return Math.max(leadingEdge.x(), 0);
    }

    SkinPoint atChordFraction(double fraction) {
        return fraction <= frontX() ? leadingEdge : section.atX(side, Math.min(fraction, maximumX));
    }

    SkinPoint atArc(double arc) {
        return section.atArcLength(side, Math.min(Math.max(arc, 0), length));
    }

    /** The skin at u. */
    SkinPoint at(double u) {
        if (u < 0) {
            return atArc(brow * (1 + u));
        }
        double x = u * u;
        return brow > 0 && x < frontX() + JUST_BEHIND ? atArc(brow) : atChordFraction(x);
    }

    /** ds/du in chords at {@code at(u)}. */
    double arcRate(double u, SkinPoint at) {
        if (u < 0) {
            return brow;
        }
        double x = u * u;
        if (x > maximumX || x < frontX()) {
            return 0;
        }
        // dx = 2u du and dx = tangentX ds; at a rounded nose s = u √(2/curvature), the limit of 2u/tangentX
        boolean atRoundNose = brow == 0 && u < 1e-7 && at.curvature() > 0 && at.tangentX() < 1e-3;
        return atRoundNose ? Math.sqrt(2 / at.curvature()) : 2 * u / Math.max(at.tangentX(), 1e-9);
    }

    /** In the plane of the section, as its coordinates say. */
    static Vector3 place(SkinPoint at, double chordMm) {
        return new Vector3(chordMm * at.x(), 0, chordMm * at.y());
    }

    static Vector3 direction(SkinPoint at, double size) {
        return new Vector3(size * at.tangentX(), 0, size * at.tangentY());
    }
}
