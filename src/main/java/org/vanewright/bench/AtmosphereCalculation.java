package org.vanewright.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.air.AirState;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/** The standard atmosphere, or the day's temperature at a pressure altitude. */
public final class AtmosphereCalculation {
    private static final String METHOD =
            "Standard pressure at the geopotential pressure altitude; density by the gas law"
                    + " of dry air; speed of sound √(1.4 R T); viscosity by Sutherland's law; density altitude is where the"
                    + " standard atmosphere has this density.";
    private static final List<String> SOURCES = List.of(
            "U.S. Standard Atmosphere 1976, NOAA, NASA, USAF, NASA-TM-X-74335, equations 23, 33, 42, 50, 51",
            "ISO 2533:1975, Standard atmosphere");
    /** Further from standard than any day a light aircraft flies. */
    private static final double FAR_FROM_STANDARD_K = 45;

    private AtmosphereCalculation() {}

    /** @throws InvalidInputException fields {@code pressureAltitudeFt}, {@code outsideAirTemperatureC} */
    public static AtmosphereResult run(AtmosphereRequest request) {
        Double altitude = request.pressureAltitudeFt();
        if (altitude == null) {
            throw new InvalidInputException(
                    new FieldProblem("pressureAltitudeFt", "missing", "a number from -1000 ft to 65617 ft"));
        }
        Double temperature = request.outsideAirTemperatureC();
        AirState air = StandardAtmosphere.at(altitude, temperature);
        return new AtmosphereResult(
                air.pressurePa(),
                air.temperatureK(),
                air.densityKgM3(),
                air.densityAltitudeFt(),
                air.speedOfSoundMps(),
                air.dynamicViscosityPaS(),
                air.kinematicViscosityM2S(),
                METHOD,
                SOURCES,
                validity(altitude, temperature));
    }

    static List<String> validity(double altitudeFt, @Nullable Double temperatureC) {
        if (temperatureC == null) {
            return List.of();
        }
        double standard = StandardAtmosphere.temperatureK(altitudeFt * StandardAtmosphere.METRES_PER_FOOT);
        double off = temperatureC + StandardAtmosphere.ZERO_CELSIUS_K - standard;
        return Math.abs(off) <= FAR_FROM_STANDARD_K
                ? List.of()
                : List.of("The temperature is " + Math.round(Math.abs(off)) + " K from standard; check the reading.");
    }
}
