package org.vanewright.bench.web.page;

import static org.vanewright.bench.web.page.Shown.digits;
import static org.vanewright.bench.web.page.Shown.fixed;

import java.util.List;
import java.util.Map;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.vanewright.bench.AtmosphereCalculation;
import org.vanewright.bench.AtmosphereRequest;
import org.vanewright.bench.AtmosphereResult;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Units;

/** The air at a pressure altitude. */
@Component
@Order(3)
class AtmosphereCalculator implements Calculator {
    static final Field ALTITUDE = Field.number(
            "pressureAltitudeFt",
            "Pressure altitude",
            "ft",
            "What the altimeter shows when it is set to 1013.25 hPa (29.92 inHg).");
    static final Field TEMPERATURE = Field.number(
            "outsideAirTemperatureC",
            "Outside air temperature",
            "°C",
            "Left empty, it is that of the standard atmosphere.");

    private static final double PA_PER_HPA = 100;
    private static final double PA_PER_INHG = 3386.389;
    private static final double KG_M3_PER_LB_FT3 = 0.45359237 / (0.3048 * 0.3048 * 0.3048);
    private static final double MICRO = 1e6;

    @Override
    public String name() {
        return "atmosphere";
    }

    @Override
    public String title() {
        return "Atmosphere";
    }

    @Override
    public String about() {
        return "Pressure, density, density altitude and viscosity of the air, on a standard day or at the temperature you"
                + " measured.";
    }

    @Override
    public List<Field> fields() {
        return List.of(ALTITUDE, TEMPERATURE);
    }

    @Override
    public Map<String, String> example() {
        return Map.of("pressureAltitudeFt", "3000", "outsideAirTemperatureC", "25");
    }

    @Override
    public Answer answer(Form form, Units units) {
        AtmosphereResult air = AtmosphereCalculation.run(
                new AtmosphereRequest(form.number("pressureAltitudeFt"), form.number("outsideAirTemperatureC")));
        double celsius = air.temperatureK() - StandardAtmosphere.ZERO_CELSIUS_K;
        boolean metric = units.metric();
        List<Figure> figures = List.of(
                new Figure("Density altitude", digits(Math.rint(air.densityAltitudeFt()), 5, "ft")),
                new Figure(
                        "Density",
                        metric
                                ? digits(air.densityKgM3(), 4, "kg/m³")
                                : digits(air.densityKgM3() / KG_M3_PER_LB_FT3, 4, "lb/ft³")),
                new Figure(
                        "Pressure",
                        metric
                                ? fixed(air.pressurePa() / PA_PER_HPA, 1, "hPa")
                                : fixed(air.pressurePa() / PA_PER_INHG, 2, "inHg")),
                new Figure("Temperature", units.temperature(celsius)),
                new Figure("Speed of sound", fixed(air.speedOfSoundMps() / Shown.MPS_PER_KNOT, 1, "kt")),
                new Figure("Dynamic viscosity", digits(air.dynamicViscosityPaS() * MICRO, 4, "µPa s")),
                new Figure("Kinematic viscosity", digits(air.kinematicViscosityM2S() * Shown.MM2_PER_M2, 4, "mm²/s")));
        return Answer.of(figures, air.method(), air.sources(), air.validity());
    }
}
