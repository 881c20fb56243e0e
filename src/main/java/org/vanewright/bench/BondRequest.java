package org.vanewright.bench;

import org.jspecify.annotations.Nullable;

/**
 * A base with one vane on it. The load is that of the air, at a speed, or a force that is known.
 *
 * @param baseLengthMm along the vane
 * @param baseWidthMm across it
 * @param vaneHeightMm above the base; with a speed
 * @param vaneLengthMm at its root; with a speed
 * @param tapeThicknessMm of the tape
 * @param normalForceCoefficient on the side area of the vane; with a speed
 * @param equivalentAirspeedKt speed of the air; absent where the force is given
 * @param sideForceN force along the skin, across the base; absent where the speed is given
 * @param forceHeightMm where it acts above the underside of the base; half the vane's height where absent
 * @param adhesive its strengths
 */
public record BondRequest(
        @Nullable Double baseLengthMm,
        @Nullable Double baseWidthMm,
        @Nullable Double vaneHeightMm,
        @Nullable Double vaneLengthMm,
        @Nullable Double tapeThicknessMm,
        @Nullable Double normalForceCoefficient,
        @Nullable Double equivalentAirspeedKt,
        @Nullable Double sideForceN,
        @Nullable Double forceHeightMm,
        @Nullable Adhesive adhesive) {
    /**
     * Strengths of the adhesive.
     *
     * @param peelNPerCm in peel, or in cleavage where that is known
     * @param shearKPa in shear
     * @param tensileKPa in tension
     */
    public record Adhesive(
            @Nullable Double peelNPerCm,
            @Nullable Double shearKPa,
            @Nullable Double tensileKPa) {}
}
