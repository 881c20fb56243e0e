package org.vanewright.engineering.air;

/**
 * Dry air at rest at one place.
 *
 * @param pressurePa static pressure
 * @param temperatureK static temperature
 * @param densityKgM3 by the gas law
 * @param densityAltitudeFt altitude in the standard atmosphere at which this density occurs
 * @param speedOfSoundMps √(1.4 R T)
 * @param dynamicViscosityPaS by Sutherland's law
 * @param kinematicViscosityM2S dynamic viscosity over density
 */
public record AirState(
        double pressurePa,
        double temperatureK,
        double densityKgM3,
        double densityAltitudeFt,
        double speedOfSoundMps,
        double dynamicViscosityPaS,
        double kinematicViscosityM2S) {}
