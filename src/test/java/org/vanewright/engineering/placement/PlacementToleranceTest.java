package org.vanewright.engineering.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.placement.PlacementTolerance.Basis;
import org.vanewright.engineering.placement.PlacementTolerance.Vane;
import org.vanewright.engineering.vane.WendtCirculation;

class PlacementToleranceTest {
    private static final Vane VANE = new Vane(8, 20, 15, 26);

    @Test
    void theLayerIsThatOfTheTurbulentFlatPlate() {
        // Prandtl's power law, Schlichting, Boundary-Layer Theory, 7th ed., chapter XXI: delta = 0.37 x Re^(-1/5);
        // x = 0.11 m, V = 30 m/s, nu = 1.4607e-5 m2/s (standard atmosphere at sea level): Re = 225,920.
        PlacementTolerance found = PlacementTolerance.of(VANE, 110, 30, 0.1);
        assertThat(found.layerThicknessMm())
                .isCloseTo(0.37 * 110 * Math.pow(0.11 * 30 / 1.4607e-5, -0.2), within(0.01));
        assertThat(found.heightToThickness()).isCloseTo(8 / found.layerThicknessMm(), within(1e-9));
    }

    @Test
    void anErrorAsLargeAsTheEffectAllowsChangesTheCirculationByTheShare() {
        Vane low = new Vane(3, 12, 10, 26);
        double share = 0.02;
        PlacementTolerance found = PlacementTolerance.of(low, 200, 25, share);
        double delta = found.layerThicknessMm();
        double here = gamma(3, 12, 10, delta);
        double aft = 200 + found.arc().byEffect();
        assertThat(gamma(3, 12, 10, delta * Math.pow(aft / 200, 0.8)) / here)
                .as("first order, so the second order of the error is left")
                .isCloseTo(1 - share, within(share * 0.15));
        assertThat(gamma(3, 12, 10 + found.angle().byEffect(), delta) / here).isCloseTo(1 + share, within(1e-9));
        assertThat(gamma(3 + found.height().byEffect(), 12, 10, delta) / here)
                .isCloseTo(1 + share, within(share * 0.05));
    }

    private static double gamma(double height, double length, double angleDeg, double delta) {
        return WendtCirculation.of(height, length, Math.toRadians(angleDeg), 25, delta)
                .circulationM2S();
    }

    @Test
    void nothingIsFinerThanARuleShowsNorWiderThanAllowed() {
        PlacementTolerance found = PlacementTolerance.of(VANE, 110, 30, 0.1);
        assertThat(found.arc().basis()).isEqualTo(Basis.WIDEST);
        assertThat(found.arc().plusMinus()).isEqualTo(3);
        assertThat(found.angle().plusMinus()).as("a tenth of 15 degrees").isCloseTo(1.5, within(1e-9));
        assertThat(found.angle().basis()).isEqualTo(Basis.EFFECT);
        assertThat(found.height().plusMinus()).isBetween(0.5, 0.8);
        PlacementTolerance straight = PlacementTolerance.of(new Vane(8, 20, 0, 26), 110, 30, 0.1);
        assertThat(straight.angle().basis()).isEqualTo(Basis.RULE);
        assertThat(straight.angle().plusMinus())
                .as("half a millimetre over the base")
                .isCloseTo(Math.toDegrees(Math.atan(0.5 / 26)), within(1e-9));
        assertThat(straight.angle().holds(1, 0)).isTrue();
        assertThat(straight.angle().holds(-1.2, 0)).isFalse();
    }

    @Test
    void hostileFiguresAreNamed() {
        for (double bad : new double[] {Double.NaN, Double.NEGATIVE_INFINITY, -1000, 1e9}) {
            assertThatThrownBy(() -> PlacementTolerance.of(new Vane(bad, bad, bad, bad), bad, bad, bad))
                    .isInstanceOfSatisfying(
                            InvalidInputException.class,
                            e -> assertThat(e.problems())
                                    .extracting(p -> p.field())
                                    .containsExactly(
                                            "arcMm",
                                            "speedMps",
                                            "share",
                                            "heightMm",
                                            "lengthMm",
                                            "angleDeg",
                                            "baseLengthMm"));
        }
    }
}
