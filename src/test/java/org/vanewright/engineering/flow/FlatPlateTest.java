package org.vanewright.engineering.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.vanewright.engineering.flow.FlatPlateRequest.PlateRegime;
import org.vanewright.engineering.input.InvalidInputException;

class FlatPlateTest {
    /** Blasius, Zeitschrift für Mathematik und Physik 56 (1908): 4.910, 1.7208, 0.66411. */
    @Test
    void laminarPlate() {
        FlatPlateResult plate = FlatPlate.run(new FlatPlateRequest(10.0, 1.0, 1e-5, PlateRegime.LAMINAR));
        assertThat(plate.reynolds()).isCloseTo(1e6, within(1e-3));
        assertThat(plate.thicknessMm()).isCloseTo(4.910, within(1e-4));
        assertThat(plate.displacementThicknessMm()).isCloseTo(1.7208, within(1e-4));
        assertThat(plate.momentumThicknessMm()).isCloseTo(0.66411, within(1e-4));
        assertThat(plate.skinFrictionCoefficient()).isCloseTo(0.66411e-3, within(1e-7));
        assertThat(plate.validity()).isEmpty();
    }

    /** Prandtl's power law in Schlichting, Boundary-Layer Theory (1979): 0.37 Re^−1/5; shares 1/8 and 7/72 of 1/7 profiles. */
    @Test
    void turbulentPlate() {
        FlatPlateResult plate = FlatPlate.run(new FlatPlateRequest(30.0, 1.0, 1e-5, PlateRegime.TURBULENT));
        assertThat(plate.thicknessMm()).isCloseTo(18.740, within(1e-2));
        assertThat(plate.displacementThicknessMm() / plate.thicknessMm()).isCloseTo(1 / 8.0, within(1e-12));
        assertThat(plate.momentumThicknessMm() / plate.thicknessMm()).isCloseTo(7 / 72.0, within(1e-12));
        assertThat(plate.sources()).isNotEmpty();
    }

    @Test
    void saysWhereTheLawsEnd() {
        assertThat(FlatPlate.run(new FlatPlateRequest(1.0, 0.1, null, PlateRegime.TURBULENT))
                        .validity())
                .hasSize(1);
        assertThat(FlatPlate.run(new FlatPlateRequest(100.0, 10.0, null, PlateRegime.LAMINAR))
                        .validity())
                .hasSize(1);
    }

    @Test
    void refusesWhatIsMissingOrAbsurd() {
        assertThatThrownBy(() -> FlatPlate.run(new FlatPlateRequest(Double.NaN, -1.0, 0.0, null)))
                .isInstanceOfSatisfying(
                        InvalidInputException.class,
                        e -> assertThat(e.problems())
                                .extracting("field")
                                .containsExactly("speedMps", "distanceM", "kinematicViscosityM2S", "regime"));
    }
}
