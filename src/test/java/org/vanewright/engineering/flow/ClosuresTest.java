package org.vanewright.engineering.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClosuresTest {
    /** Cebeci, Bradshaw (1977), formulas worked out by hand. */
    @ParameterizedTest
    @CsvSource({"0.05, 0.2940, 2.4356", "0, 0.2200, 2.6100", "-0.04, 0.1532, 2.8190", "-0.08, 0.0545, 3.3063"})
    void laminarCorrelations(double lambda, double shear, double shape) {
        assertThat(ThwaitesClosure.shear(lambda)).isCloseTo(shear, within(1e-4));
        assertThat(ThwaitesClosure.shapeFactor(lambda)).isCloseTo(shape, within(1e-4));
    }

    /** Head (1958) in the fits of Cebeci, Bradshaw (1977), formulas worked out by hand. */
    @ParameterizedTest
    @CsvSource({
        "1.3, 9.8341, 0.009350",
        "1.4, 7.1775, 0.012667",
        "1.5, 5.9777, 0.015609",
        "1.6, 5.3093, 0.018260",
        "2.0, 3.9587, 0.031406",
        "2.4, 3.5931, 0.042236"
    })
    void entrainment(double shape, double entrainmentShape, double entrainment) {
        assertThat(HeadClosure.entrainmentShape(shape)).isCloseTo(entrainmentShape, within(1e-4));
        assertThat(HeadClosure.entrainment(entrainmentShape)).isCloseTo(entrainment, within(2e-6));
    }

    /** Ludwieg, Tillmann, NACA TM 1285 (1950), formula worked out by hand. */
    @ParameterizedTest
    @CsvSource({"1.3, 1000, .005076", "1.4, 1000, .004342", "1.4, 5000, .002821", "1.4, 10000, .002343"})
    void friction(double shape, double momentumReynolds, double friction) {
        assertThat(HeadClosure.friction(shape, momentumReynolds)).isCloseTo(friction, within(1e-6));
    }

    @Test
    void shapeFactorGoesThroughTheGapOfTheFits() {
        for (double shape = 1.2; shape < 2.8; shape += 0.01) {
            assertThat(HeadClosure.shapeFactor(HeadClosure.entrainmentShape(shape)))
                    .isCloseTo(shape, within(1e-9));
        }
        assertThat(HeadClosure.shapeFactor(5.30)).isEqualTo(1.6);
        double before = HeadClosure.shapeFactor(3.35);
        for (double h1 = 3.36; h1 < 12; h1 += 0.01) {
            double shape = HeadClosure.shapeFactor(h1);
            assertThat(shape).as("at %s", h1).isLessThanOrEqualTo(before);
            before = shape;
        }
    }

    /** Michel (1951) in the fit of Cebeci, Smith (1974), formula worked out by hand. */
    @ParameterizedTest
    @CsvSource({"1e6, 690.7", "2e6, 939.7", "3e6, 1128.2", "5e6, 1422.8", "1e7, 1952.7"})
    void michel(double arcReynolds, double momentumReynolds) {
        assertThat(TransitionCriterion.momentumReynolds(arcReynolds)).isCloseTo(momentumReynolds, within(0.1));
    }

    /** Squire, Young, ARC R&M 1838 (1938), formula worked out by hand. */
    @ParameterizedTest
    @CsvSource({".003, .95, 1.4, .0050917", ".003, .90, 1.6, .0042379"})
    void profileDrag(double theta, double speed, double shape, double drag) {
        assertThat(SquireYoung.drag(theta, speed, shape)).isCloseTo(drag, within(1e-7));
    }

    /** Wedge flows integrated here from f″(0) of Hartree (1937): the table of laminar thickness must follow them. */
    @ParameterizedTest
    @CsvSource({
        "1, 1.2325877",
        "0.5, 0.9276800",
        "0.1, 0.5870353",
        "0, 0.4695999883",
        "-0.1, 0.3192698",
        "-0.16, 0.1907799"
    })
    void laminarThicknessFollowsWedgeFlows(double beta, double wallSlope) {
        List<double[]> profile = profile(beta, wallSlope);
        double displacement = 0;
        double momentum = 0;
        double thickness = 0;
        for (int i = 1; i < profile.size(); i++) {
            double u = profile.get(i)[1];
            double mean = 0.5 * (u + profile.get(i - 1)[1]);
            displacement += STEP * (1 - mean);
            momentum += STEP * mean * (1 - mean);
            if (thickness == 0 && u >= 0.99) {
                thickness = i * STEP;
            }
        }
        double lambda = beta * momentum * momentum;
        assertThat(ThwaitesClosure.excess(lambda)).isCloseTo((thickness - displacement) / momentum, within(0.01));
    }

    private static final double STEP = 0.001;

    private static List<double[]> profile(double beta, double wallSlope) {
        List<double[]> profile = new ArrayList<>();
        var integrator = new DormandPrince853Integrator(1e-8, 0.1, 1e-12, 1e-12);
        integrator.addStepHandler(step -> {
            double reached = step.getCurrentState().getTime();
            while (profile.size() * STEP <= reached) {
                profile.add(step.getInterpolatedState(profile.size() * STEP).getPrimaryState());
            }
        });
        integrator.integrate(
                new OrdinaryDifferentialEquation() {
                    @Override
                    public int getDimension() {
                        return 3;
                    }

                    @Override
                    public double[] computeDerivatives(double t, double[] f) {
                        return new double[] {f[1], f[2], -f[0] * f[2] - beta * (1 - f[1] * f[1])};
                    }
                },
                new ODEState(0, new double[] {0, 0, wallSlope}),
                5.5);
        return profile;
    }

    /** Thwaites' quadrature with λ = −0.09 in closed form: 1 − 2.2^(−1/6); Howarth's flow, Proc. Roy. Soc. A 164 (1938). */
    @Test
    void howarthsFlowSeparatesWhereTheQuadratureSays() {
        double x = LaminarChecks.separates(s -> 1 - s, 0.2, 400);
        assertThat(x).isCloseTo(1 - Math.pow(2.2, -1 / 6.0), within(1e-5));
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 200, 400})
    void cylinderSeparatesWhereWhiteSays(int pieces) {
        // F. M. White, Viscous Fluid Flow: Thwaites' method gives 103.1° from the front
        double degrees = Math.toDegrees(LaminarChecks.separates(s -> 2 * Math.sin(s), 2.5, pieces));
        assertThat(degrees).isCloseTo(103.1, within(0.1));
    }

    /** In a long recovery the turbulent layer stops at H = 2.4 and is flagged behind it. */
    @Test
    void turbulentLayerStopsAtSeparation() {
        int n = 200;
        double[] s = new double[n + 1];
        double[] u = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            s[i] = 2.0 * i / n;
            u[i] = s[i] < 1 ? 1 : 1 - 0.5 * (s[i] - 1);
        }
        Layer layer = BoundaryLayer.follow(new EdgeFlow(s, u, s, new double[n + 1]), 1e-6, 0.05, 1e-8);
        assertThat(layer.separation).isBetween(1.2, 1.9);
        for (int i = 0; i <= n; i++) {
            boolean behind = s[i] > layer.separation;
            assertThat(layer.regime[i] == Regime.SEPARATED).as("at %s", s[i]).isEqualTo(behind);
            if (layer.regime[i] == Regime.TURBULENT) {
                assertThat(layer.shape[i]).isLessThan(HeadClosure.SEPARATION + 1e-6);
            }
        }
    }

    /** Whether steps go from station to station, to halves and quarters, or adapt themselves to a thin layer. */
    @ParameterizedTest
    @ValueSource(doubles = {1e-5, 1e-6, 1e-7, 1e-9})
    void aTurbulentLayerHardlyDependsOnItsStations(double viscosity) {
        Layer fine = slowing(400, viscosity);
        assertThat(fine.attached()).isTrue();
        for (int pieces : new int[] {50, 100, 200}) {
            Layer layer = slowing(pieces, viscosity);
            double momentum = fine.momentum[400];
            assertThat(layer.momentum[pieces]).as("%s pieces", pieces).isCloseTo(momentum, within(1e-3 * momentum));
            assertThat(layer.shape[pieces]).isCloseTo(fine.shape[400], within(1e-3));
        }
    }

    /** Turbulent from the same place with the same thickness, whatever the stations. */
    private static Layer slowing(int pieces, double viscosity) {
        double[] s = new double[pieces + 1];
        double[] u = new double[pieces + 1];
        for (int i = 0; i <= pieces; i++) {
            s[i] = (double) i / pieces;
            u[i] = 1 - 0.2 * s[i] * s[i];
        }
        Layer layer = new Layer(new EdgeFlow(s, u, s, new double[pieces + 1]));
        layer.transition = 0.1;
        layer.momentumAtTransition = 0.7 * Math.sqrt(0.1 * viscosity);
        int first = (int) Math.ceil(0.1 * pieces + 1e-9);
        TurbulentLayer.follow(layer, viscosity, first, 1e-8);
        return layer;
    }

    @Test
    void tabulatedEntrainmentIsHeads() {
        for (double h1 = 3.2; h1 < 20; h1 += 0.013) {
            double exact = 0.0306 * Math.pow(h1 - 3, -0.6169);
            assertThat(HeadClosure.entrainment(h1)).isCloseTo(exact, within(1e-8 * exact));
        }
    }
}
