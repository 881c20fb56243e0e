package org.vanewright.engineering.vane;

/**
 * Force square to the side of one vane, as if it stood in the full speed of the edge: an upper bound for what the air does
 * in steady flight, meant for the bond and not for the flow.
 *
 * <p>The skin mirrors the vane, so it counts as the upper half of a wing of twice its height. Without suction at its sharp
 * edges the force is square to it,
 *
 * <pre>
 * C_N = K_p sin α cos α + π sin² α,      K_p = 2 π AR / (2 + √(AR² + 4)),      AR = (2 h)² / (2 S)
 * </pre>
 *
 * by the leading-edge suction analogy (E. C. Polhamus, A Concept of the Vortex Lift of Sharp-Edge Delta Wings Based on a
 * Leading-Edge-Suction Analogy, NASA TN D-3767, 1966, from memory) with the lift slope of H. B. Helmbold, Der unverwundene
 * Ellipsenflügel als tragende Fläche, Jahrbuch 1942 der Deutschen Luftfahrtforschung (from memory).
 *
 * @param normalForceCoefficient C_N, on the side area of the vane
 * @param forceN square to the vane
 * @param forceHeightMm where it acts above the skin: the middle of the side area
 */
public record SideLoad(double normalForceCoefficient, double forceN, double forceHeightMm) {
    /**
     * @param heightMm of the vane
     * @param sideAreaMm2 of one face
     * @param centroidHeightMm of that face above the skin
     * @param angleRad to the local flow, of either sign
     * @param dynamicPressurePa of the flow at the edge of the boundary layer
     */
    public static SideLoad of(
            double heightMm, double sideAreaMm2, double centroidHeightMm, double angleRad, double dynamicPressurePa) {
        double aspectRatio = 2 * heightMm * heightMm / sideAreaMm2;
        double potential = 2 * Math.PI * aspectRatio / (2 + Math.sqrt(aspectRatio * aspectRatio + 4));
        double sine = Math.abs(Math.sin(angleRad));
        double coefficient = potential * sine * Math.abs(Math.cos(angleRad)) + Math.PI * sine * sine;
        return new SideLoad(coefficient, coefficient * dynamicPressurePa * sideAreaMm2 * 1e-6, centroidHeightMm);
    }
}
