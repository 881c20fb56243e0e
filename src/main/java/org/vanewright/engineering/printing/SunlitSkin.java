package org.vanewright.engineering.printing;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Temperature that a skin in the sun settles at: what it absorbs, it gives off by convection and radiation,
 * αG = h(Ts − Ta) + εσ(Ts⁴ − Ta⁴), with surroundings that radiate at the air's temperature and nothing lost to the inside.
 * Steady balance after Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, chapter 1 (from memory).
 *
 * @param absorptance of the surface for sunlight, 0 to 1
 * @param irradianceWM2 of the sun on it, 0 to 1400
 * @param airC temperature of the air, −40 to 60
 * @param convectionWM2K coefficient of heat transfer to the air, 1 to 100; 5 to 15 in still air
 * @param emittance of the surface for heat, 0 to 1
 */
public record SunlitSkin(
        double absorptance, double irradianceWM2, double airC, double convectionWM2K, double emittance) {
    /** CODATA 2018 value of the Stefan-Boltzmann constant. */
    private static final double STEFAN_BOLTZMANN_W_M2_K4 = 5.670374e-8;

    private static final double ZERO_C_IN_K = 273.15;
    private static final double EXACT_K = 1e-6;
    private static final int MOST_STEPS = 200;

    /** @throws InvalidInputException naming each value out of range */
    public SunlitSkin {
        Checks checks = new Checks();
        checks.range("absorptance", absorptance, 0, 1, "");
        checks.range("irradianceWM2", irradianceWM2, 0, 1400, "W/m²");
        checks.range("airC", airC, -40, 60, "°C");
        checks.range("convectionWM2K", convectionWM2K, 1, 100, "W/m²K");
        checks.range("emittance", emittance, 0, 1, "");
        checks.throwIfAny();
    }

    /** The steady temperature in °C, never below the air's. */
    public double temperatureC() {
        double air = airC + ZERO_C_IN_K;
        double gain = absorptance * irradianceWM2;
        UnivariateFunction surplus = skin -> convectionWM2K * (skin - air)
                + emittance * STEFAN_BOLTZMANN_W_M2_K4 * (Math.pow(skin, 4) - Math.pow(air, 4))
                - gain;
        // without radiation it would be hottest
        double hottest = air + gain / convectionWM2K + EXACT_K;
        return new BrentSolver(EXACT_K).solve(MOST_STEPS, surplus, air, hottest) - ZERO_C_IN_K;
    }
}
