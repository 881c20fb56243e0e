package org.vanewright.layout;

import org.jspecify.annotations.Nullable;

/** Which underside a base needs to lie on the skin. */
public final class BaseFit {
    /** A base this much flatter than its bond line is thick needs no hollow underside. */
    private static final double FLAT_RADIUS_MM = 10_000;

    private BaseFit() {}

    /**
     * Radius of the skin along a device turned against the chord, to the whole mm; absent where it is all but flat.
     * Euler's theorem with no curvature along the span: curvature along the device is that along the chord times the
     * squared cosine of the angle.
     */
    public static @Nullable Double radiusMm(StationRow station) {
        Double chordwise = station.skinRadiusMm();
        if (chordwise == null) {
            return null;
        }
        double cosine = Math.cos(Math.toRadians(station.angleDeg()));
        double along = chordwise / (cosine * cosine);
        return Math.abs(along) > FLAT_RADIUS_MM ? null : (Double) (double) Math.round(along);
    }
}
