package org.vanewright.engineering.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class RigidBaseTest {
    /** 60 m/s. */
    private static final double SPEED_KT = 60 * 3600 / 1852.0;

    // Rigid rectangular footing on an elastic layer, worked out by hand: 60 m/s EAS, so q = 2205 Pa.
    @Test
    void theWorkedCase() {
        BondLoad air = BondLoad.ofAir(1.2, 10, 20, SPEED_KT);
        BondStress stress = RigidBase.under(new TapedBase(25, 12, 0), air);

        assertThat(BondLoad.dynamicPressurePa(SPEED_KT)).isCloseTo(2205, within(0.1));
        assertThat(air.forceN()).isCloseTo(0.52920, within(1e-4));
        assertThat(air.heightMm()).isEqualTo(5);
        assertThat(stress.shearPa()).isCloseTo(1764.0, within(0.1));
        assertThat(stress.momentNm()).isCloseTo(2.6460e-3, within(1e-6));
        assertThat(stress.peakTensionPa()).isCloseTo(4410.0, within(0.3));
        assertThat(stress.cleavageNPerM()).isCloseTo(13.23, within(1e-3));
        assertThat(stress.cleavageNPerCm()).isCloseTo(0.1323, within(1e-5));
        assertThat(stress.peakTensionPa() / stress.shearPa()).isCloseTo(2.5, within(1e-9));
    }

    /** σ/τ = 3 h/b for a plate on tape without thickness; equilibrium of force and moment for any base. */
    @Test
    void forceAndMomentAreBalanced() {
        Random random = new Random(20261128);
        for (int i = 0; i < 500; i++) {
            double edge = 5 + 50 * random.nextDouble();
            double across = 5 + 30 * random.nextDouble();
            double tape = 2 * random.nextDouble();
            BondLoad load = new BondLoad(5 * random.nextDouble(), 20 * random.nextDouble(), 3 * random.nextDouble());
            TapedBase base = new TapedBase(edge, across, tape);
            BondStress stress = RigidBase.under(base, load);
            double area = edge * across * 1e-6;

            assertThat(stress.shearPa() * area).isCloseTo(load.forceN(), within(1e-9));
            double bending = stress.peakTensionPa() - load.pullN() / area;
            assertThat(bending * edge * across * across * 1e-9 / 6).isCloseTo(stress.momentNm(), within(1e-9));
            assertThat(stress.momentNm()).isCloseTo(load.forceN() * (load.heightMm() + tape) * 1e-3, within(1e-12));
            assertThat(RigidBase.under(base.turned().turned(), load)).isEqualTo(stress);
        }
    }

    @Test
    void aPullIsAddedEvenly() {
        TapedBase base = new TapedBase(20, 10, 1);
        double none = RigidBase.under(base, new BondLoad(1, 5, 0)).peakTensionPa();
        double pulled = RigidBase.under(base, new BondLoad(1, 5, 2)).peakTensionPa();
        assertThat(pulled - none).isCloseTo(2 / 200e-6, within(1e-6));
    }
}
