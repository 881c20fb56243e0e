package org.vanewright.engineering.vane;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Circulation of the vortex that one vane sheds:
 *
 * <pre>
 * Γ = k₁ α V l tanh(k₃ h/δ) / (1 + k₂/AR),    AR = 8 h/(π l),    k₁ = 1.61, k₂ = 0.48, k₃ = 1.41
 * </pre>
 *
 * with α in radians, h the height, l the length, δ the thickness of the boundary layer and V the speed at its edge.
 *
 * <p>Fitted by B. J. Wendt, Initial Circulation and Peak Vorticity Behavior of Vortices Shed from Airfoil Vortex
 * Generators, NASA/CR-2001-211144, 2001, to vanes of symmetric aerofoil section in a duct at Mach 0.2 to 0.6; as restated
 * by J. C. Dudek, Empirical Model for Vane-Type Vortex Generators in a Navier-Stokes Code, AIAA Journal 44(8), 2006,
 * 1779-1789 (quoted second-hand).
 *
 * @param aspectRatio of an ellipse-like wing of twice the height, 8 h/(π l)
 * @param heightToThickness h/δ
 * @param circulationM2S Γ, of the sign of the angle
 */
public record WendtCirculation(double aspectRatio, double heightToThickness, double circulationM2S) {
    public static final double LOWEST_HEIGHT_TO_LENGTH = 0.13;
    public static final double HIGHEST_HEIGHT_TO_LENGTH = 2.62;
    public static final double LOWEST_HEIGHT_TO_THICKNESS = 0.12;
    public static final double HIGHEST_HEIGHT_TO_THICKNESS = 2.60;

    private static final double K1 = 1.61;
    private static final double K2 = 0.48;
    private static final double K3 = 1.41;

    /**
     * @param heightMm of the vane above the skin
     * @param lengthMm at its root
     * @param angleRad to the local flow
     * @param edgeSpeedMps at the edge of the boundary layer
     * @param thicknessMm of the boundary layer, to 99 % of the edge speed
     */
    public static WendtCirculation of(
            double heightMm, double lengthMm, double angleRad, double edgeSpeedMps, double thicknessMm) {
        double aspectRatio = 8 * heightMm / (Math.PI * lengthMm);
        double ratio = heightMm / thicknessMm;
        double circulation =
                K1 * angleRad * edgeSpeedMps * (lengthMm / 1000) * Math.tanh(K3 * ratio) / (1 + K2 / aspectRatio);
        return new WendtCirculation(aspectRatio, ratio, circulation);
    }

    /** Whether both ratios lie inside what was measured. */
    public boolean isInsideFit() {
        return insideLength() && insideThickness();
    }

    /** Why it is an estimate; the first line holds for every printed vane. */
    public List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        warnings.add(
                "The fit is for vanes of aerofoil section at Mach 0.2 to 0.6; a thin printed vane on a slow aircraft is"
                        + " an extrapolation.");
        if (!insideLength()) {
            warnings.add(String.format(
                    Locale.ROOT,
                    "Height over length is %.2f; measured were %.2f to %.2f.",
                    heightToLength(),
                    LOWEST_HEIGHT_TO_LENGTH,
                    HIGHEST_HEIGHT_TO_LENGTH));
        }
        if (!insideThickness()) {
            warnings.add(String.format(
                    Locale.ROOT,
                    "Height over boundary-layer thickness is %.2f; measured were %.2f to %.2f.",
                    heightToThickness,
                    LOWEST_HEIGHT_TO_THICKNESS,
                    HIGHEST_HEIGHT_TO_THICKNESS));
        }
        return List.copyOf(warnings);
    }

    /** h/l, from the aspect ratio. */
    public double heightToLength() {
        return aspectRatio * Math.PI / 8;
    }

    private boolean insideLength() {
        double ratio = heightToLength();
        return ratio >= LOWEST_HEIGHT_TO_LENGTH && ratio <= HIGHEST_HEIGHT_TO_LENGTH;
    }

    private boolean insideThickness() {
        return heightToThickness >= LOWEST_HEIGHT_TO_THICKNESS && heightToThickness <= HIGHEST_HEIGHT_TO_THICKNESS;
    }
}
