package org.vanewright.engineering.placement;

import java.util.List;
import org.vanewright.engineering.geometry.Point2;

/**
 * What a device covers on the skin, in its own frame: origin at the centre of its base, x rearward, mm. The outline is
 * symmetric about x.
 *
 * @param baseOutline closed outline of the base, first point not repeated
 * @param vaneOutlines outlines of its vanes on the base, for drawings
 * @param pairOnOneBase whether it holds a counter-rotating pair, so that it sits straight
 */
public record DeviceFootprint(List<Point2> baseOutline, List<List<Point2>> vaneOutlines, boolean pairOnOneBase) {
    public DeviceFootprint {
        baseOutline = List.copyOf(baseOutline);
        vaneOutlines = List.copyOf(vaneOutlines);
    }

    /** Half the width across the chordwise direction when turned by the angle. */
    double halfSpanMm(double angleDeg) {
        double angle = Math.toRadians(angleDeg);
        return baseOutline.stream()
                .mapToDouble(p -> Math.abs(p.rotated(angle).y()))
                .max()
                .orElseThrow();
    }

    /** Half the length along the chordwise direction when turned by the angle. */
    double halfChordMm(double angleDeg) {
        double angle = Math.toRadians(angleDeg);
        return baseOutline.stream()
                .mapToDouble(p -> Math.abs(p.rotated(angle).x()))
                .max()
                .orElseThrow();
    }

    /** From the centre of the base to its farthest edge. */
    public double reachMm() {
        return baseOutline.stream().mapToDouble(Point2::norm).max().orElseThrow();
    }
}
