package org.vanewright.engineering.printing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.engineering.input.InvalidInputException;

class SunlitSkinTest {
    /** Worked by hand from the balance with σ = 5.670374e-8, at 1000 W/m², 38 °C and an emittance of 0.9. */
    @ParameterizedTest
    @CsvSource({"0.95, 8, 96.9", "0.95, 15, 80.2", "0.2, 8, 51.7", "0.5, 8, 70.9"})
    void workedBalances(double absorptance, double convection, double expectedC) {
        assertThat(new SunlitSkin(absorptance, 1000, 38, convection, 0.9).temperatureC())
                .isCloseTo(expectedC, within(0.1));
    }

    @Test
    void withoutSunItIsAsWarmAsTheAir() {
        assertThat(new SunlitSkin(0.9, 0, 21, 10, 0.9).temperatureC()).isCloseTo(21, within(1e-4));
        assertThat(new SunlitSkin(0, 1000, -12, 10, 0.9).temperatureC()).isCloseTo(-12, within(1e-4));
    }

    @Test
    void theBalanceCloses() {
        Random random = new Random(20261128);
        for (int i = 0; i < 500; i++) {
            SunlitSkin skin = new SunlitSkin(
                    random.nextDouble(),
                    1400 * random.nextDouble(),
                    -40 + 100 * random.nextDouble(),
                    1 + 99 * random.nextDouble(),
                    random.nextDouble());
            double ts = skin.temperatureC() + 273.15;
            double ta = skin.airC() + 273.15;
            double given = skin.convectionWM2K() * (ts - ta)
                    + skin.emittance() * 5.670374e-8 * (Math.pow(ts, 4) - Math.pow(ta, 4));
            assertThat(given).as(skin.toString()).isCloseTo(skin.absorptance() * skin.irradianceWM2(), within(1e-3));
        }
    }

    @Test
    void refusesWhatIsNoSurface() {
        assertThatThrownBy(() -> new SunlitSkin(1.2, -1, Double.NaN, 0, 2))
                .isInstanceOfSatisfying(
                        InvalidInputException.class,
                        e -> assertThat(e.problems())
                                .extracting("field")
                                .containsExactly("absorptance", "irradianceWM2", "airC", "convectionWM2K", "emittance"));
    }
}
