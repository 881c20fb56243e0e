package org.vanewright.engineering.vane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class VaneLoadsTest {
    /** Slender wing theory (R. T. Jones, NACA Report 835, 1946): slope π AR/2 for small aspect ratios. */
    @Test
    void aLowVaneHasTheSlopeOfASlenderWing() {
        SideLoad load = SideLoad.of(1, 1000, 0.5, 1e-4, 1000);
        assertThat(load.normalForceCoefficient() / 1e-4).isCloseTo(Math.PI * 0.002 / 2, within(1e-3));
    }

    /** Two-dimensional thin aerofoil: slope 2π for large ones. */
    @Test
    void aTallVaneHasTheSlopeOfAThinAerofoil() {
        SideLoad load = SideLoad.of(1000, 1000, 500, 1e-6, 1000);
        assertThat(load.normalForceCoefficient() / 1e-6).isCloseTo(2 * Math.PI, within(0.02));
    }

    @Test
    void forceIsCoefficientTimesPressureTimesAreaWhateverTheSign() {
        SideLoad load = SideLoad.of(10, 200, 5, Math.toRadians(15), 2205);
        assertThat(load.forceN()).isCloseTo(load.normalForceCoefficient() * 2205 * 200e-6, within(1e-12));
        assertThat(SideLoad.of(10, 200, 5, Math.toRadians(-15), 2205)).isEqualTo(load);
        assertThat(load.forceHeightMm()).isEqualTo(5);
        assertThat(load.normalForceCoefficient()).isBetween(0.4, 1.0);
    }

    @Test
    void theBandOfDragIsOrderedAndAddsUp() {
        Random random = new Random(3);
        for (int i = 0; i < 500; i++) {
            double height = 2 + 20 * random.nextDouble();
            double area = height * (5 + 30 * random.nextDouble());
            double angle = Math.toRadians(25 * random.nextDouble());
            double ratio = 0.05 + 3 * random.nextDouble();
            SideLoad load = SideLoad.of(height, area, height / 2, angle, 500);
            DragBand one = DragBand.of(area, 2e4 + 1e5 * random.nextDouble(), ratio, load, angle, 1.4);
            assertThat(one.lowAreaM2()).isPositive().isLessThan(one.highAreaM2());
            DragBand three = one.plus(one.times(2)).plus(DragBand.NONE);
            assertThat(three.highAreaM2()).isCloseTo(3 * one.highAreaM2(), within(1e-12));
        }
    }

    /** ∫₀¹ (y^(1/7))² dy = 7/9. */
    @Test
    void aVaneAsHighAsTheLayerMeetsSevenNinthsOfThePressure() {
        SideLoad load = SideLoad.of(10, 200, 5, 0, 500);
        double friction = 2 * 200e-6 * 1.328 / Math.sqrt(1e4);
        assertThat(DragBand.of(200, 1e4, 1, load, 0, 1).lowAreaM2()).isCloseTo(friction * 7 / 9, within(1e-15));
        assertThat(DragBand.of(200, 1e4, 1e6, load, 0, 1).lowAreaM2()).isCloseTo(friction, within(1e-9));
    }
}
