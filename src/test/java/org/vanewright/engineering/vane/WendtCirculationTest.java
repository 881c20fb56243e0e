package org.vanewright.engineering.vane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WendtCirculationTest {
    // Recomputed from the fit of B. J. Wendt, NASA/CR-2001-211144, 2001, as restated by J. C. Dudek, 2006.
    @ParameterizedTest
    @CsvSource({
        "5, 10, 15, 30, 5, 1.27324, 0.081499",
        "5, 10, 15, 30, 10, 1.27324, 0.055790",
        "10, 10, 16, 50, 10, 2.54648, 0.167865"
    })
    void circulationIsThatOfTheFit(
            double height, double length, double angleDeg, double speed, double thickness, double ratio, double gamma) {
        WendtCirculation vortex = WendtCirculation.of(height, length, Math.toRadians(angleDeg), speed, thickness);
        assertThat(vortex.aspectRatio()).isCloseTo(ratio, within(1e-5));
        assertThat(vortex.circulationM2S()).isCloseTo(gamma, within(1e-6));
        assertThat(vortex.heightToThickness()).isEqualTo(height / thickness);
        assertThat(vortex.heightToLength()).isCloseTo(height / length, within(1e-12));
        assertThat(vortex.warnings()).hasSize(1);
        assertThat(vortex.isInsideFit()).isTrue();
    }

    @Test
    void circulationIsLinearInAngleAndSpeedAndSaturatesWithHeight() {
        Random random = new Random(11);
        for (int i = 0; i < 200; i++) {
            double height = 2 + 20 * random.nextDouble();
            double length = 5 + 40 * random.nextDouble();
            double angle = 0.01 + 0.4 * random.nextDouble();
            double speed = 10 + 60 * random.nextDouble();
            double thickness = 1 + 30 * random.nextDouble();
            double once =
                    WendtCirculation.of(height, length, angle, speed, thickness).circulationM2S();
            assertThat(WendtCirculation.of(height, length, -angle, speed, thickness)
                            .circulationM2S())
                    .isCloseTo(-once, within(1e-12));
            assertThat(WendtCirculation.of(height, length, angle, 2 * speed, thickness)
                            .circulationM2S())
                    .isCloseTo(2 * once, within(1e-12));
            double outside = WendtCirculation.of(height, length, angle, speed, height / 1000)
                    .circulationM2S();
            assertThat(outside).isGreaterThanOrEqualTo(once);
            double deep = WendtCirculation.of(height, length, angle, speed, height * 1e4)
                    .circulationM2S();
            double deeper = WendtCirculation.of(height, length, angle, speed, height * 2e4)
                    .circulationM2S();
            assertThat(deep / deeper).isCloseTo(2, within(1e-6));
        }
    }

    @ParameterizedTest
    @CsvSource({"5, 60, 5, Height over length", "5, 10, 60, boundary-layer thickness", "30, 10, 30, Height over length"
    })
    void whatLiesOutsideTheFitSaysSo(double height, double length, double thickness, String words) {
        WendtCirculation vortex = WendtCirculation.of(height, length, 0.2, 30, thickness);
        assertThat(vortex.isInsideFit()).isFalse();
        assertThat(vortex.warnings()).hasSize(2);
        assertThat(vortex.warnings().get(1)).contains(words);
    }
}
