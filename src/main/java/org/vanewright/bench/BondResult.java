package org.vanewright.bench;

import java.util.List;

/**
 * What a bond bears beside what it can.
 *
 * @param sideForceN on the vane
 * @param shearStressPa mean shear stress in the bond
 * @param peakTensionPa at the edge that is pulled up
 * @param cleavageLineLoadNPerCm tension of the pulled half for each centimetre of edge
 * @param margins strength over demand
 * @param method how it was computed
 * @param sources citations
 * @param validity warnings
 */
public record BondResult(
        double sideForceN,
        double shearStressPa,
        double peakTensionPa,
        double cleavageLineLoadNPerCm,
        Margins margins,
        String method,
        List<String> sources,
        List<String> validity) {
    /** Strength over demand, without any knock-down. */
    public record Margins(double shear, double tension, double cleavage) {}
}
