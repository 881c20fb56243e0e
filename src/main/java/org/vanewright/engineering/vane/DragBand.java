package org.vanewright.engineering.vane;

/**
 * What devices add to the drag of an aircraft, as a band: an estimate, since no clean table of drag per device was found.
 *
 * <p>Low: laminar friction on both faces alone (Blasius, C_F = 1.328/√Re), in the air that a boundary layer of the 1/7
 * profile leaves below the vane's height. High: turbulent friction on both faces (Prandtl, C_F = 0.074/Re^0.2) and the
 * streamwise part of the {@linkplain SideLoad side load}, all in the full speed of the edge. Neither holds what the
 * vortices save or cost further aft. Friction laws: H. Schlichting, Boundary-Layer Theory, chapters VII and XXI.
 *
 * @param lowAreaM2 drag over dynamic pressure of the free stream
 * @param highAreaM2 the same at its upper end
 */
public record DragBand(double lowAreaM2, double highAreaM2) {
    /** Of nothing. */
    public static final DragBand NONE = new DragBand(0, 0);

    private static final double PROFILE_EXPONENT = 2.0 / 7;

    /**
     * Of one vane.
     *
     * @param sideAreaMm2 of one face
     * @param reynolds of its length at the edge of the boundary layer
     * @param heightToThickness h/δ
     * @param load on its side
     * @param angleRad to the local flow
     * @param speedRatio speed at the edge over that of the free stream
     */
    public static DragBand of(
            double sideAreaMm2,
            double reynolds,
            double heightToThickness,
            SideLoad load,
            double angleRad,
            double speedRatio) {
        double faces = 2 * sideAreaMm2 * 1e-6 * speedRatio * speedRatio;
        double low = faces * 1.328 / Math.sqrt(reynolds) * slowed(heightToThickness);
        double high = faces * (0.074 / Math.pow(reynolds, 0.2) + load.normalForceCoefficient() * share(angleRad) / 2);
        return new DragBand(low, high);
    }

    public DragBand plus(DragBand other) {
        return new DragBand(lowAreaM2 + other.lowAreaM2, highAreaM2 + other.highAreaM2);
    }

    public DragBand times(int devices) {
        return new DragBand(lowAreaM2 * devices, highAreaM2 * devices);
    }

    private static double share(double angleRad) {
        return Math.abs(Math.sin(angleRad));
    }

    /** Mean of (u/U)² from the skin to the vane's height in a 1/7 profile. */
    private static double slowed(double heightToThickness) {
        double inside = 1 / (1 + PROFILE_EXPONENT);
        return heightToThickness <= 1
                ? inside * Math.pow(heightToThickness, PROFILE_EXPONENT)
                : (inside + heightToThickness - 1) / heightToThickness;
    }
}
