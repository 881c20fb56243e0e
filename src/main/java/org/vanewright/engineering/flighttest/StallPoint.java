package org.vanewright.engineering.flighttest;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;

/**
 * One stall.
 *
 * @param calibratedAirspeedKt at the break
 * @param massKg then
 * @param loadFactor then, 1 in steady flight with the wings level
 * @param entryRateKtPerS loss of speed from 1.1 of the stall speed down, positive; null where it was not measured
 */
public record StallPoint(
        double calibratedAirspeedKt,
        double massKg,
        double loadFactor,
        @Nullable Double entryRateKtPerS) {
    private static final double GRAVITY = 9.80665;

    /**
     * Speed with the same lift coefficient at the standard mass and a load factor of 1, V √(m_s/(m n)): lift is n m g and
     * grows with the square of speed. FAA, AC 23-8C, Flight Test Guide for Certification of Part 23 Airplanes, 2011, on
     * stalling speed (from memory).
     */
    public double standardAirspeedKt(double standardMassKg) {
        return calibratedAirspeedKt * Math.sqrt(standardMassKg / (massKg * loadFactor));
    }

    /** n m g/(½ ρ₀ V² S), with calibrated for equivalent airspeed. */
    public double liftCoefficient(double wingAreaM2) {
        double speed = calibratedAirspeedKt * Airspeeds.METRES_PER_SECOND_PER_KNOT;
        double pressure = StandardAtmosphere.SEA_LEVEL_DENSITY_KG_M3 * speed * speed / 2;
        return loadFactor * massKg * GRAVITY / (pressure * wingAreaM2);
    }
}
