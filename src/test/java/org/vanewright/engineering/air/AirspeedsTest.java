package org.vanewright.engineering.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.input.InvalidInputException;

class AirspeedsTest {
    // Worked table of a public calculator (low authority); the arithmetic was done again by hand.
    @ParameterizedTest
    @CsvSource({
        "1500, 0, 15, 95.94, 95.94, 0.1450",
        "3200, 5000, 5, 139.72, 150.33, 0.2313",
        "6200, 12000, -5, 193.49, 232.68, 0.3646"
    })
    void impactPressureGivesTheWorkedSpeeds(
            double impactPa, double altitudeFt, double temperatureC, double calibrated, double trueKt, double mach) {
        Airspeeds speeds = Airspeeds.ofImpactPressure(impactPa, StandardAtmosphere.at(altitudeFt, temperatureC));
        assertThat(speeds.calibratedAirspeedKt()).isCloseTo(calibrated, within(0.01));
        assertThat(speeds.trueAirspeedKt()).isCloseTo(trueKt, within(0.01));
        assertThat(speeds.mach()).isCloseTo(mach, within(1e-4));
    }

    // From the equations of the Society of Flight Test Engineers, Reference Handbook, 2013, part 4, by hand.
    @ParameterizedTest
    @CsvSource({"100, 10000, , 99.872, 116.218", "60, 5000, 30, 59.988, 67.454"})
    void calibratedAirspeedGivesTheOthers(
            double calibrated, double altitudeFt, Double temperatureC, double equivalent, double trueKt) {
        Airspeeds speeds = Airspeeds.ofCalibrated(calibrated, StandardAtmosphere.at(altitudeFt, temperatureC));
        assertThat(speeds.calibratedAirspeedKt()).isCloseTo(calibrated, within(1e-9));
        assertThat(speeds.equivalentAirspeedKt()).isCloseTo(equivalent, within(0.01));
        assertThat(speeds.trueAirspeedKt()).isCloseTo(trueKt, within(0.01));
    }

    // The same handbook, part 4: CAS 100 kt at 10,000 ft has 1630.28 Pa, worked by hand.
    @Test
    void aHundredKnotsHaveTheirImpactPressure() {
        assertThat(Airspeeds.ofCalibrated(100, StandardAtmosphere.at(10_000, null))
                        .impactPressurePa())
                .isCloseTo(1630.28, within(0.01));
    }

    // E. Williams, Aviation Formulary, worked example (from memory): CAS 250 kt at 10,000 ft is Mach 0.4523.
    @Test
    void machOfTheFormularysExample() {
        assertThat(Airspeeds.ofCalibrated(250, StandardAtmosphere.at(10_000, null))
                        .mach())
                .isCloseTo(0.4523, within(1e-4));
    }

    @Test
    void allThreeWaysLeadToTheSameSpeeds() {
        Random random = new Random(8);
        for (int i = 0; i < 500; i++) {
            AirState air = StandardAtmosphere.at(40_000 * random.nextDouble(), null);
            Airspeeds speeds = Airspeeds.ofCalibrated(1e-3 + 200 * random.nextDouble(), air);
            for (Airspeeds other : new Airspeeds[] {
                Airspeeds.ofTrue(speeds.trueAirspeedKt(), air),
                Airspeeds.ofImpactPressure(speeds.impactPressurePa(), air)
            }) {
                assertThat(other.calibratedAirspeedKt())
                        .isCloseTo(speeds.calibratedAirspeedKt(), within(1e-9 * speeds.calibratedAirspeedKt()));
                assertThat(other.mach()).isCloseTo(speeds.mach(), within(1e-12));
            }
            assertThat(speeds.equivalentAirspeedKt()).isLessThanOrEqualTo(speeds.calibratedAirspeedKt() + 1e-9);
            assertThat(speeds.trueAirspeedKt()).isGreaterThanOrEqualTo(speeds.equivalentAirspeedKt() - 1e-9);
        }
    }

    @Test
    void standingStillIsNoSpeedAtAll() {
        AirState air = StandardAtmosphere.at(3000, null);
        assertThat(Airspeeds.ofTrue(0, air)).isEqualTo(new Airspeeds(0, 0, 0, 0, 0));
        assertThat(Airspeeds.ofTrue(100, air).dynamicPressurePa())
                .isCloseTo(air.densityKgM3() * Math.pow(100 * 1852.0 / 3600, 2) / 2, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 1001, Double.NaN, Double.POSITIVE_INFINITY, 700})
    void otherSpeedsAreNamed(double speed) {
        InvalidInputException refused = catchThrowableOfType(
                InvalidInputException.class, () -> Airspeeds.ofTrue(speed, StandardAtmosphere.at(0, null)));
        assertThat(refused.problems()).hasSize(1);
        assertThat(refused.problems().get(0).field()).isEqualTo("trueAirspeedKt");
    }

    /** In the standard atmosphere both altitudes are one; a warm column stands higher, by ΔT/T of each layer. */
    @ParameterizedTest
    @CsvSource({"0, 20, 0", "3000, 0, 3000", "3000, 15, 3161.7", "3000, -15, 2838.3", "15000, 10, 15623.4"})
    void trueAltitudeOfWarmAndColdColumns(double pressureAltitudeM, double warmerK, double expectedM) {
        double found = StandardAtmosphere.trueAltitudeM(pressureAltitudeM, warmerK);
        assertThat(found).isCloseTo(expectedM, within(1.0));
        double sum = 0;
        for (int i = 0; i < 1000; i++) {
            double level = (i + 0.5) / 1000 * pressureAltitudeM;
            double standard = StandardAtmosphere.temperatureK(level);
            sum += (standard + warmerK) / standard * pressureAltitudeM / 1000;
        }
        assertThat(found).isCloseTo(sum, within(1e-3));
    }
}
