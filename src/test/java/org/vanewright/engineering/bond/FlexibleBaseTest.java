package org.vanewright.engineering.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.input.InvalidInputException;

class FlexibleBaseTest {
    private static final double TAPE_PA = 6e5;

    private static FlexibleBase single(double across, double thickness, double modulus) {
        return FlexibleBase.under(
                new TapedBase(25, across, 1),
                new BaseBending(modulus, thickness, TAPE_PA, List.of(across / 2)),
                List.of(BondLoad.of(1, 9)));
    }

    @Test
    void approachesTheRigidBaseAsItsStiffnessGrows() {
        BondStress rigid = RigidBase.under(new TapedBase(25, 12, 1), BondLoad.of(1, 9));
        double before = Double.POSITIVE_INFINITY;
        for (double modulus = 1e9; modulus < 1e16; modulus *= 10) {
            FlexibleBase base = single(12, 1, modulus);
            double off = Math.abs(base.stress().peakTensionPa() / rigid.peakTensionPa() - 1);
            assertThat(off).isLessThan(before + 1e-9);
            before = off;
        }
        FlexibleBase stiff = single(12, 1, 1e16);
        assertThat(stiff.isStiff()).isTrue();
        assertThat(stiff.stress().peakTensionPa()).isCloseTo(rigid.peakTensionPa(), withinPercentage(1e-4));
        assertThat(stiff.stress().cleavageNPerM()).isCloseTo(rigid.cleavageNPerM(), withinPercentage(1e-2));
        assertThat(stiff.stress().shearPa()).isEqualTo(rigid.shearPa());
        assertThat(stiff.stress().momentNm()).isEqualTo(rigid.momentNm());
    }

    /** Up to β b = 1 the rigid formula is what it claims to be, and beyond it no longer. */
    @Test
    void theRigidFormulaHoldsUpToItsLimit() {
        double modulusAtLimit = 2e9 * Math.pow(single(12, 1, 2e9).betaAcross(), 4);
        FlexibleBase limit = single(12, 1, modulusAtLimit);
        BondStress rigid = RigidBase.under(new TapedBase(25, 12, 1), BondLoad.of(1, 9));

        assertThat(limit.betaAcross()).isCloseTo(1, within(1e-9));
        assertThat(limit.stress().peakTensionPa()).isCloseTo(rigid.peakTensionPa(), withinPercentage(3));
        FlexibleBase soft = single(12, 1, modulusAtLimit / 1000);
        assertThat(soft.isStiff()).isFalse();
        assertThat(soft.stress().peakTensionPa()).isGreaterThan(1.3 * rigid.peakTensionPa());
    }

    // M. Hetényi, Beams on Elastic Foundation, 1946 (from memory): infinite beam under a couple M0 at its middle,
    // y = M0 λ²/k e^(−λx) sin λx; each half is a semi-infinite beam whose end does not lift and bears M0/2.
    @ParameterizedTest
    @ValueSource(doubles = {60, 150, 400, 4000})
    void aLongBaseIsTwoSemiInfiniteBeams(double across) {
        FlexibleBase base = single(across, 0.6, 2e9);
        double lambda = base.betaAcross() / (across * 1e-3);
        double edge = 0.025;
        double moment = base.stress().momentNm();
        double peak = moment * lambda * lambda / edge * Math.exp(-Math.PI / 4) * Math.sin(Math.PI / 4);
        // the pull of one half up to where it turns to pressure, at λx = π: ∫ e^-u sin u du = (1 + e^-π)/2
        double line = moment * lambda / edge * (1 + Math.exp(-Math.PI)) / 2;

        assertThat(base.betaAcross()).isGreaterThan(5);
        assertThat(base.stress().peakTensionPa()).isCloseTo(peak, withinPercentage(0.2));
        assertThat(base.stress().cleavageNPerM()).isCloseTo(line, withinPercentage(0.2));
    }

    @Test
    void aPairPushedTheSameWayAsksNoLessThanEitherVane() {
        TapedBase base = new TapedBase(30, 40, 1);
        BaseBending bending = new BaseBending(2e9, 1, TAPE_PA, List.of(10.0, 30.0));
        BondLoad push = BondLoad.of(1, 6);
        BondLoad none = BondLoad.of(0, 6);
        BondStress both = FlexibleBase.under(base, bending, List.of(push, push)).stress();
        BondStress first =
                FlexibleBase.under(base, bending, List.of(push, none)).stress();
        BondStress second =
                FlexibleBase.under(base, bending, List.of(none, push)).stress();

        assertThat(both.peakTensionPa()).isGreaterThanOrEqualTo(first.peakTensionPa());
        // from either side, so mirrored
        assertThat(first.peakTensionPa()).isCloseTo(second.peakTensionPa(), withinPercentage(1e-6));
        assertThat(both.momentNm()).isCloseTo(2 * first.momentNm(), within(1e-12));
    }

    @Test
    void tapeWithoutThicknessIsRefused() {
        assertThatThrownBy(() -> FlexibleBase.under(
                        new TapedBase(25, 12, 0),
                        new BaseBending(2e9, 1, TAPE_PA, List.of(6.0)),
                        List.of(BondLoad.of(1, 9))))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("tapeThicknessMm");
    }

    @Test
    void neverAnythingButAFiniteNumber() {
        Random random = new Random(7);
        for (int i = 0; i < 500; i++) {
            double across = Math.pow(10, random.nextDouble() * 3);
            FlexibleBase base = FlexibleBase.under(
                    new TapedBase(1 + 100 * random.nextDouble(), across, Math.pow(10, -2 + 2.7 * random.nextDouble())),
                    new BaseBending(
                            Math.pow(10, 7 + 5 * random.nextDouble()),
                            0.2 + 5 * random.nextDouble(),
                            Math.pow(10, 3 + 7 * random.nextDouble()),
                            List.of(across * random.nextDouble())),
                    List.of(BondLoad.of(0.01 + random.nextDouble(), 10 * random.nextDouble())));
            assertThat(base.stress().peakTensionPa()).isFinite().isPositive();
            assertThat(base.stress().cleavageNPerM()).isFinite().isNotNegative();
        }
    }
}
