package org.vanewright.engineering.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.complex.Complex;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.Sections;

/** Exact flows: T. Theodorsen, I. E. Garrick, NACA TR-452 (1933), for Joukowski's and Kármán and Trefftz's maps. */
class PanelMethodTest {
    private static final double ANGLE = Math.toRadians(5);

    /** Halving the panels must divide both errors by about four. */
    @ParameterizedTest
    @ValueSource(doubles = {2, 1.94})
    void errorsFallAtSecondOrder(double exponent) {
        ConformalSection map = new ConformalSection(-0.1, exponent);
        Section section = map.section();
        double[] lift = new double[3];
        double[] speed = new double[3];
        for (int i = 0; i < 3; i++) {
            PotentialFlow flow = PotentialFlow.about(section, 100 << i);
            lift[i] = Math.abs(flow.at(ANGLE).liftCoefficient() / map.chord() - map.liftCoefficient(ANGLE));
            speed[i] = worstSpeed(map, flow.at(ANGLE));
        }
        double liftOrder = Math.log(lift[0] / lift[2]) / Math.log(4);
        double speedOrder = Math.log(speed[0] / speed[2]) / Math.log(4);
        assertThat(liftOrder).as("order of lift").isBetween(1.7, 2.5);
        assertThat(speedOrder).as("order of speed").isBetween(1.7, 2.6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {2, 1.94, 1.9})
    void liftAndSpeedHoldAtTwoHundredPanels(double exponent) {
        ConformalSection map = new ConformalSection(-0.1, exponent);
        PanelSolution flow = PotentialFlow.about(map.section(), 200).at(ANGLE);
        assertThat(flow.liftCoefficient() / map.chord()).isCloseTo(map.liftCoefficient(ANGLE), within(0.003 * 0.6));
        assertThat(worstSpeed(map, flow)).isLessThan(0.005);
    }

    /** Over the whole skin but the last 2 % of the chord. */
    private static double worstSpeed(ConformalSection map, PanelSolution flow) {
        double worst = 0;
        for (int degrees = 17; degrees <= 343; degrees++) {
            double on = Math.toRadians(degrees);
            Complex z = map.image(on);
            double exact = map.speed(on, ANGLE);
            worst = Math.max(worst, Math.abs(flow.speedNear(z.getReal(), z.getImaginary()) - exact));
        }
        return worst;
    }

    @Test
    void liftByPressureIsLiftByCirculation() {
        PotentialFlow flow = PotentialFlow.about(Sections.naca("2412"), 200);
        double angle = flow.angleForLift(0.7);
        assertThat(flow.at(angle).liftCoefficient()).isCloseTo(0.7, within(2e-3));
    }

    /** A layer that displaces the same flow everywhere is a source at the stagnation point's place: it must lift nothing. */
    @Test
    void evenDisplacementOfASymmetricSectionLiftsNothing() {
        PotentialFlow flow = PotentialFlow.about(Sections.naca("0012"), 120);
        double[] displaced = IntStream.rangeClosed(0, 120)
                .mapToDouble(i -> i < 60 ? -0.002 : i == 60 ? 0 : 0.002)
                .toArray();
        double[] answer = flow.response(displaced);
        PanelSolution changed = flow.at(0, answer);
        assertThat(changed.liftCoefficient()).isCloseTo(0, within(1e-9));
        assertThat(changed.vorticity()[20])
                .as("a thicker body is passed faster")
                .isGreaterThan(flow.at(0).vorticity()[20]);
    }

    @Test
    void factorsSolveAsTheLibraryDoes() {
        int n = 60;
        Random chance = new Random(7);
        double[][] matrix = new double[n][n];
        double[] right = new double[n];
        for (int i = 0; i < n; i++) {
            right[i] = chance.nextGaussian();
            for (int j = 0; j < n; j++) {
                matrix[i][j] = chance.nextGaussian();
            }
        }
        double[] expected = new LUDecomposition(MatrixUtils.createRealMatrix(matrix))
                .getSolver()
                .solve(new ArrayRealVector(right))
                .toArray();
        assertThat(new DenseFactorisation(matrix).solve(right)).containsExactly(expected, within(1e-9));
    }

    @Test
    void panelsLieOnTheSkinAndMeetAtASharpEdge() {
        PanelGeometry blunt = PanelGeometry.of(Sections.naca("2412"), 101);
        assertThat(blunt.panels()).isEqualTo(101);
        assertThat(blunt.sharp).isFalse();
        assertThat(PanelGeometry.of(new ConformalSection(-0.1, 2).section(), 100).sharp)
                .isTrue();
        double turned =
                IntStream.range(1, blunt.panels()).mapToDouble(blunt::turn).sum();
        assertThat(turned)
                .as("an outline turns left by half a turn and its edge's angle")
                .isBetween(Math.PI, 3.6);
    }
}
