package org.vanewright.engineering.air;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * The standard atmosphere from 5 km below to 20 km above sea level: 6.5 K per kilometre up to the tropopause at 11 km,
 * constant temperature above it. Altitudes are geopotential, as an altimeter reads them; tables of geometric altitude
 * need {@link #geopotentialM} first.
 *
 * <pre>
 * T = 288.15 K − 0.0065 H              p = 101325 Pa (T / 288.15)^(g / 0.0065 R)      H ≤ 11 000 m
 * T = 216.65 K                         p = p₁₁ exp(−g (H − 11 000) / (R T))           H &gt; 11 000 m
 * ρ = p / (R T)      a = √(1.4 R T)    μ = 1.458·10⁻⁶ T^1.5 / (T + 110.4)
 * </pre>
 *
 * Sources: U.S. Standard Atmosphere 1976 (NOAA, NASA, USAF, NASA-TM-X-74335), equations 23, 33, 42, 50, 51; ISO
 * 2533:1975.
 */
public final class StandardAtmosphere {
    public static final double METRES_PER_FOOT = 0.3048;
    public static final double SEA_LEVEL_PRESSURE_PA = 101_325;
    public static final double SEA_LEVEL_TEMPERATURE_K = 288.15;
    public static final double ZERO_CELSIUS_K = 273.15;
    /** R of dry air, J/(kg K). */
    public static final double GAS_CONSTANT = 287.05287;

    /** Ratio of specific heats. */
    public static final double HEAT_RATIO = 1.4;

    /** Density of the standard atmosphere at sea level. */
    public static final double SEA_LEVEL_DENSITY_KG_M3 =
            SEA_LEVEL_PRESSURE_PA / (GAS_CONSTANT * SEA_LEVEL_TEMPERATURE_K);

    private static final double GRAVITY = 9.80665;
    private static final double LAPSE_K_PER_M = 0.0065;
    private static final double PRESSURE_EXPONENT = GRAVITY / (LAPSE_K_PER_M * GAS_CONSTANT);
    private static final double TROPOPAUSE_M = 11_000;
    private static final double TROPOPAUSE_K = SEA_LEVEL_TEMPERATURE_K - LAPSE_K_PER_M * TROPOPAUSE_M;
    private static final double TROPOPAUSE_PA =
            SEA_LEVEL_PRESSURE_PA * Math.pow(TROPOPAUSE_K / SEA_LEVEL_TEMPERATURE_K, PRESSURE_EXPONENT);
    private static final double TROPOPAUSE_KG_M3 = TROPOPAUSE_PA / (GAS_CONSTANT * TROPOPAUSE_K);
    private static final double SCALE_HEIGHT_M = GAS_CONSTANT * TROPOPAUSE_K / GRAVITY;
    private static final double EARTH_RADIUS_M = 6_356_766;

    private static final double LOWEST_FT = -1_000;
    private static final double HIGHEST_FT = 65_617;
    private static final double COLDEST_C = -100;
    private static final double HOTTEST_C = 60;
    /** Lower bound of the published tables, −5 km. */
    private static final double LOWEST_DENSITY_ALTITUDE_FT = -5_000 / METRES_PER_FOOT;

    private StandardAtmosphere() {}

    /**
     * The air at a pressure altitude.
     *
     * @param pressureAltitudeFt −1,000 to 65,617 ft (20 km)
     * @param outsideAirTemperatureC static temperature, −100 to 60 °C; null for the standard one
     * @throws InvalidInputException fields {@code pressureAltitudeFt}, {@code outsideAirTemperatureC}: outside these
     *     ranges, or so warm or cold that density altitude leaves −16,404 to 65,617 ft
     */
    public static AirState at(double pressureAltitudeFt, @Nullable Double outsideAirTemperatureC) {
        Checks checks = new Checks();
        checks.range("pressureAltitudeFt", pressureAltitudeFt, LOWEST_FT, HIGHEST_FT, "ft");
        checks.optionalRange("outsideAirTemperatureC", outsideAirTemperatureC, COLDEST_C, HOTTEST_C, "°C");
        checks.throwIfAny();
        double altitudeM = pressureAltitudeFt * METRES_PER_FOOT;
        double temperatureK =
                outsideAirTemperatureC == null ? temperatureK(altitudeM) : outsideAirTemperatureC + ZERO_CELSIUS_K;
        AirState state = of(pressurePa(altitudeM), temperatureK);
        checks.require(
                state.densityAltitudeFt() >= LOWEST_DENSITY_ALTITUDE_FT && state.densityAltitudeFt() <= HIGHEST_FT + 1,
                "outsideAirTemperatureC",
                outsideAirTemperatureC,
                "a temperature that keeps density altitude from -16404 ft to 65617 ft");
        checks.throwIfAny();
        return state;
    }

    /** Standard temperature at a geopotential altitude. */
    public static double temperatureK(double altitudeM) {
        return altitudeM <= TROPOPAUSE_M ? SEA_LEVEL_TEMPERATURE_K - LAPSE_K_PER_M * altitudeM : TROPOPAUSE_K;
    }

    /** Standard pressure at a geopotential altitude, equations 33 of the U.S. Standard Atmosphere 1976. */
    public static double pressurePa(double altitudeM) {
        return altitudeM <= TROPOPAUSE_M
                ? SEA_LEVEL_PRESSURE_PA * Math.pow(temperatureK(altitudeM) / SEA_LEVEL_TEMPERATURE_K, PRESSURE_EXPONENT)
                : TROPOPAUSE_PA * Math.exp(-(altitudeM - TROPOPAUSE_M) / SCALE_HEIGHT_M);
    }

    /** Geopotential altitude at which a pressure is standard: what an altimeter set to 1013.25 hPa shows. */
    public static double pressureAltitudeM(double pressurePa) {
        return pressurePa >= TROPOPAUSE_PA
                ? levelM(Math.pow(pressurePa / SEA_LEVEL_PRESSURE_PA, 1 / PRESSURE_EXPONENT))
                : TROPOPAUSE_M + SCALE_HEIGHT_M * Math.log(TROPOPAUSE_PA / pressurePa);
    }

    /** Geopotential altitude at which a density is standard. */
    public static double densityAltitudeM(double densityKgM3) {
        return densityKgM3 >= TROPOPAUSE_KG_M3
                ? levelM(Math.pow(densityKgM3 / SEA_LEVEL_DENSITY_KG_M3, 1 / (PRESSURE_EXPONENT - 1)))
                : TROPOPAUSE_M + SCALE_HEIGHT_M * Math.log(TROPOPAUSE_KG_M3 / densityKgM3);
    }

    /**
     * Geopotential height of a pressure altitude above the level of 1013.25 hPa in air that is warmer than standard by
     * the same amount at every level: the hydrostatic equation dh = (T + ΔT)/T dH, integrated.
     *
     * @param pressureAltitudeM 0 to 20,000 m
     * @param warmerByK negative where colder than standard
     */
    public static double trueAltitudeM(double pressureAltitudeM, double warmerByK) {
        double level = Math.min(pressureAltitudeM, TROPOPAUSE_M);
        double below = warmerByK / LAPSE_K_PER_M * Math.log(SEA_LEVEL_TEMPERATURE_K / temperatureK(level));
        double above = warmerByK / TROPOPAUSE_K * (pressureAltitudeM - level);
        return pressureAltitudeM + below + above;
    }

    /** Geopotential altitude of a geometric one, r₀ Z/(r₀ + Z) with r₀ = 6 356 766 m. */
    public static double geopotentialM(double geometricM) {
        return EARTH_RADIUS_M * geometricM / (EARTH_RADIUS_M + geometricM);
    }

    /** Sutherland's law, equation 51 of the U.S. Standard Atmosphere 1976. */
    public static double dynamicViscosityPaS(double temperatureK) {
        return 1.458e-6 * Math.pow(temperatureK, 1.5) / (temperatureK + 110.4);
    }

    public static double speedOfSoundMps(double temperatureK) {
        return Math.sqrt(HEAT_RATIO * GAS_CONSTANT * temperatureK);
    }

    private static AirState of(double pressurePa, double temperatureK) {
        double density = pressurePa / (GAS_CONSTANT * temperatureK);
        double viscosity = dynamicViscosityPaS(temperatureK);
        return new AirState(
                pressurePa,
                temperatureK,
                density,
                densityAltitudeM(density) / METRES_PER_FOOT,
                speedOfSoundMps(temperatureK),
                viscosity,
                viscosity / density);
    }

    /** Altitude below the tropopause with this ratio of its temperature to that at sea level. */
    private static double levelM(double temperatureRatio) {
        return SEA_LEVEL_TEMPERATURE_K / LAPSE_K_PER_M * (1 - temperatureRatio);
    }
}
