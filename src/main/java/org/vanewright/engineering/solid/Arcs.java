package org.vanewright.engineering.solid;

/** How finely to facet. */
final class Arcs {
    /** Even a coarse tolerance leaves a recognisable arc. */
    private static final double COARSEST = 0.1;

    private Arcs() {}

    /** Segments for an arc so that no chord is further than {@code toleranceMm} from it; at least one. */
    static int segments(double radiusMm, double angleRad, double toleranceMm) {
        double sagitta = Math.min(COARSEST, toleranceMm / radiusMm);
        return Math.max(1, (int) Math.ceil(angleRad / (2 * Math.acos(1 - sagitta)) - 1e-9));
    }
}
