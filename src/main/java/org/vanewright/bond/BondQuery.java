package org.vanewright.bond;

import org.jspecify.annotations.Nullable;

/**
 * What a bond is asked to bear, as a person wishes it; absent values take those of {@link BondAssumption}.
 *
 * @param speedKt equivalent airspeed; the never-exceed speed of the airframe where absent
 * @param loadFactor on the force of the air
 * @param speedRatio local speed at the devices over that of the free stream
 * @param sideslipDeg added to the angle of each vane
 * @param knockN force at the tip of a vane
 * @param temperatureFactor what heat leaves of a strength
 * @param ageingFactor what age leaves of it
 * @param surfaceFactor what the surface leaves of it
 * @param baseModulusMPa Young's modulus of the printed material
 * @param tapeModulusKPa of the tape through its thickness; the adhesive's own, or that of its class, where absent
 */
public record BondQuery(
        @Nullable Double speedKt,
        @Nullable Double loadFactor,
        @Nullable Double speedRatio,
        @Nullable Double sideslipDeg,
        @Nullable Double knockN,
        @Nullable Double temperatureFactor,
        @Nullable Double ageingFactor,
        @Nullable Double surfaceFactor,
        @Nullable Double baseModulusMPa,
        @Nullable Double tapeModulusKPa) {
    /** One that leaves everything as it is usual. */
    public static final BondQuery USUAL = new BondQuery(null, null, null, null, null, null, null, null, null, null);
}
