package org.vanewright.engineering.bond;

import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;

/**
 * A force on a piece, as its bond has to bear it.
 *
 * @param forceN along the skin
 * @param heightMm where it acts above the underside of the base
 * @param pullN away from the skin; 0 for air and knocks
 */
public record BondLoad(double forceN, double heightMm, double pullN) {
    /** A force along the skin alone. */
    public static BondLoad of(double forceN, double heightMm) {
        return new BondLoad(forceN, heightMm, 0);
    }

    /** Force of the air on the side of a plate, q C_N h l, at half its height. */
    public static BondLoad ofAir(
            double normalForceCoefficient, double vaneHeightMm, double vaneLengthMm, double equivalentAirspeedKt) {
        double areaM2 = vaneHeightMm * vaneLengthMm * 1e-6;
        return of(dynamicPressurePa(equivalentAirspeedKt) * normalForceCoefficient * areaM2, vaneHeightMm / 2);
    }

    /** ½ ρ₀ V², with the density of the standard atmosphere at sea level. */
    public static double dynamicPressurePa(double equivalentAirspeedKt) {
        double speed = equivalentAirspeedKt * Airspeeds.METRES_PER_SECOND_PER_KNOT;
        return StandardAtmosphere.SEA_LEVEL_DENSITY_KG_M3 * speed * speed / 2;
    }

    /** The same, so many times larger. */
    public BondLoad times(double factor) {
        return new BondLoad(forceN * factor, heightMm, pullN * factor);
    }
}
