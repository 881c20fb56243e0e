package org.vanewright.engineering.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

class StandardAtmosphereTest {
    private static final double FOOT = 0.3048;

    // U.S. Standard Atmosphere 1976 (NASA-TM-X-74335), table I, by geometric altitude Z.
    @ParameterizedTest
    @CsvSource({
        "0, 288.150, 101325, 1.2250, 340.3, 17.89e-6",
        "1000, 281.651, 89876, 1.1117, 336.4, 17.58e-6",
        "2000, 275.154, 79501, 1.0066, 332.5, 17.26e-6",
        "5000, 255.676, 54048, 0.7364, 320.5, 16.28e-6",
        "11000, 216.774, 22700, 0.3648, 295.2, 14.22e-6"
    })
    void geometricAltitudesHaveTheTabulatedAir(
            double geometricM, double temperatureK, double pressurePa, double density, double sound, double viscosity) {
        AirState air = StandardAtmosphere.at(StandardAtmosphere.geopotentialM(geometricM) / FOOT, null);
        assertThat(air.temperatureK()).isCloseTo(temperatureK, within(0.001));
        assertThat(air.pressurePa()).isCloseTo(pressurePa, within(1.0));
        assertThat(air.densityKgM3()).isCloseTo(density, within(1e-4));
        assertThat(air.speedOfSoundMps()).isCloseTo(sound, within(0.1));
        assertThat(air.dynamicViscosityPaS()).isCloseTo(viscosity, within(0.01e-6));
    }

    // The same tables: kinematic viscosity at Z = 0 and 5000 m, three digits.
    @ParameterizedTest
    @CsvSource({"0, 1.46e-5", "5000, 2.21e-5"})
    void kinematicViscosityIsAsTabulated(double geometricM, double kinematicViscosity) {
        AirState air = StandardAtmosphere.at(StandardAtmosphere.geopotentialM(geometricM) / FOOT, null);
        assertThat(air.kinematicViscosityM2S()).isCloseTo(kinematicViscosity, withinPercentage(0.5));
    }

    // ISO 2533:1975 by geopotential altitude H, from memory.
    @ParameterizedTest
    @CsvSource({
        "1000, 281.650, 89874.6, 1.11164",
        "2000, 275.150, 79495.2, 1.00649",
        "3048, 268.338, 69681.7, 0.904637",
        "5000, 255.650, 54019.9, 0.736116"
    })
    void geopotentialAltitudesHaveTheTabulatedAir(
            double altitudeM, double temperatureK, double pressurePa, double density) {
        AirState air = StandardAtmosphere.at(altitudeM / FOOT, null);
        assertThat(air.temperatureK()).isCloseTo(temperatureK, within(1e-3));
        assertThat(air.pressurePa()).isCloseTo(pressurePa, within(0.5));
        assertThat(air.densityKgM3()).isCloseTo(density, within(2e-5));
        assertThat(air.densityAltitudeFt()).isCloseTo(altitudeM / FOOT, within(1e-6));
    }

    // U.S. Standard Atmosphere 1976 at the tropopause, H = 11 km: 22632.1 Pa, theta 0.751865, sigma 0.297076, delta
    // 0.223361.
    @Test
    void theTropopauseIsWhereItIsTabulated() {
        AirState air = StandardAtmosphere.at(11_000 / FOOT, null);
        assertThat(air.pressurePa()).isCloseTo(22632.1, within(0.5));
        assertThat(air.temperatureK() / 288.15).isCloseTo(0.751865, within(1e-6));
        assertThat(air.densityKgM3() / 1.225).isCloseTo(0.297076, within(1e-6));
        assertThat(air.pressurePa() / 101325).isCloseTo(0.223361, within(1e-6));
    }

    // Society of Flight Test Engineers reference handbook (2013), section 3: delta above the tropopause is 0.223361
    // exp(-0.000048063 (h - 36089)), h in feet.
    @ParameterizedTest
    @CsvSource({"40000", "50000", "60000", "65617"})
    void pressureFallsExponentiallyAboveTheTropopause(double altitudeFt) {
        AirState air = StandardAtmosphere.at(altitudeFt, null);
        assertThat(air.temperatureK()).isCloseTo(216.65, within(1e-9));
        double delta = 0.223361 * Math.exp(-0.000048063 * (altitudeFt - 36089));
        assertThat(air.pressurePa() / 101325).isCloseTo(delta, withinPercentage(0.01));
        assertThat(air.densityAltitudeFt()).isCloseTo(altitudeFt, within(1e-6));
    }

    // Society of Flight Test Engineers reference handbook (2013), section 3, U.S. Standard Atmosphere in US units:
    // kinematic viscosity in 1e-4 ft²/s and viscosity in 1e-7 lb s/ft², whose last digit runs 0.11 % high at 10,000 ft.
    @ParameterizedTest
    @CsvSource({"0, 1.572, 3.737", "5000, 1.776, 3.638", "10000, 2.013, 3.538"})
    void viscositiesAgreeWithTheTableInUsUnits(double altitudeFt, double kinematic, double dynamic) {
        AirState air = StandardAtmosphere.at(altitudeFt, null);
        assertThat(air.kinematicViscosityM2S() / (FOOT * FOOT) * 1e4).isCloseTo(kinematic, withinPercentage(0.1));
        assertThat(air.dynamicViscosityPaS() / 47.880259 * 1e7).isCloseTo(dynamic, withinPercentage(0.15));
    }

    // Derived from the closed form H = T0/0.0065 (1 - (rho/rho0)^(1/4.255876)).
    @ParameterizedTest
    @CsvSource({"5000, 30, 7800.7", "0, 30, 1723.9"})
    void warmAirIsThinnerThanItsPressureAltitudeSays(double altitudeFt, double celsius, double densityAltitudeFt) {
        assertThat(StandardAtmosphere.at(altitudeFt, celsius).densityAltitudeFt())
                .isCloseTo(densityAltitudeFt, within(1.0));
    }

    // Derived from Hp = (1 - (p/P0)^0.1902632) / 6.8755856e-6 ft, the altimeter equation of the SFTE handbook (2013).
    @ParameterizedTest
    @CsvSource({"95000, 1772.76, 0.2", "84307.3, 5000.0, 0.1"})
    void pressureAltitudeIsWhatAnAltimeterShows(double pressurePa, double altitudeFt, double tolerance) {
        assertThat(StandardAtmosphere.pressureAltitudeM(pressurePa) / FOOT).isCloseTo(altitudeFt, within(tolerance));
    }

    @Test
    void altitudesComeBackFromPressureAndDensity() {
        Random random = new Random(7);
        for (int i = 0; i < 1000; i++) {
            double altitudeM = -5000 + 25_000 * random.nextDouble();
            double pressure = StandardAtmosphere.pressurePa(altitudeM);
            double density = pressure / (StandardAtmosphere.GAS_CONSTANT * StandardAtmosphere.temperatureK(altitudeM));
            assertThat(StandardAtmosphere.pressureAltitudeM(pressure)).isCloseTo(altitudeM, within(1e-7));
            assertThat(StandardAtmosphere.densityAltitudeM(density)).isCloseTo(altitudeM, within(1e-7));
        }
    }

    @Test
    void theStandardTemperatureGivenByHandChangesNothing() {
        assertThat(StandardAtmosphere.at(0, 15.0)).isEqualTo(StandardAtmosphere.at(0, null));
    }

    @ParameterizedTest
    @CsvSource({
        "-1001, , pressureAltitudeFt", "65618, , pressureAltitudeFt", "NaN, , pressureAltitudeFt",
        "Infinity, , pressureAltitudeFt", "0, -101, outsideAirTemperatureC", "0, 61, outsideAirTemperatureC",
        "0, NaN, outsideAirTemperatureC", "65617, 60, outsideAirTemperatureC", "-1000, -100, outsideAirTemperatureC"
    })
    void airOutsideTheModelIsRefusedByField(double altitudeFt, @Nullable Double celsius, String field) {
        assertThat(refused(altitudeFt, celsius).problems())
                .extracting(FieldProblem::field)
                .containsExactly(field);
    }

    @Test
    void everyProblemIsNamedAtOnce() {
        assertThat(refused(1e6, 1e6).problems())
                .extracting(FieldProblem::field)
                .containsExactly("pressureAltitudeFt", "outsideAirTemperatureC");
    }

    private static InvalidInputException refused(double altitudeFt, @Nullable Double celsius) {
        InvalidInputException refused =
                catchThrowableOfType(InvalidInputException.class, () -> StandardAtmosphere.at(altitudeFt, celsius));
        assertThat(refused).isNotNull();
        return refused;
    }
}
