package org.vanewright.engineering.bond;

import org.jspecify.annotations.Nullable;

/**
 * What an adhesive bears by its data sheet; what is not stated is absent.
 *
 * @param edgeNPerCm along an edge: its cleavage strength where stated, else its peel strength
 * @param shearKPa shear strength
 * @param tensileKPa tensile strength
 */
public record BondStrength(
        @Nullable Double edgeNPerCm,
        @Nullable Double shearKPa,
        @Nullable Double tensileKPa) {
    private static final double PA_PER_KPA = 1_000;
    private static final double N_PER_M_IN_N_PER_CM = 100;

    /** Strength left after the knock-down over what is asked. */
    public BondMargins over(BondStress asked, KnockDown knockDown) {
        double left = knockDown.factor();
        return new BondMargins(
                ratio(shearKPa, PA_PER_KPA * left, asked.shearPa()),
                ratio(tensileKPa, PA_PER_KPA * left, asked.peakTensionPa()),
                ratio(edgeNPerCm, N_PER_M_IN_N_PER_CM * left, asked.cleavageNPerM()));
    }

    private static @Nullable Double ratio(@Nullable Double strength, double inBaseUnit, double asked) {
        return strength == null || !(asked > 0) ? null : (Double) (strength * inBaseUnit / asked);
    }
}
