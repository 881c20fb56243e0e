package org.vanewright.engineering.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The beam against its own equation and against equilibrium. */
class FreeBeamTest {
    @Test
    void krylovsFunctionsAreDerivativesOfEachOther() {
        double h = 1e-5;
        for (double s = 0.1; s < 6; s += 0.37) {
            Krylov low = Krylov.at(s - h);
            Krylov high = Krylov.at(s + h);
            Krylov here = Krylov.at(s);
            double scale = Math.cosh(s);
            assertThat((high.k1() - low.k1()) / (2 * h)).isCloseTo(-4 * here.k4(), within(1e-8 * scale));
            assertThat((high.k2() - low.k2()) / (2 * h)).isCloseTo(here.k1(), within(1e-8 * scale));
            assertThat((high.k3() - low.k3()) / (2 * h)).isCloseTo(here.k2(), within(1e-8 * scale));
            assertThat((high.k4() - low.k4()) / (2 * h)).isCloseTo(here.k3(), within(1e-8 * scale));
        }
    }

    /** The foundation carries the load: ∫ k y dx = P and ∫ k y x dx = P a − M, whatever the stiffness. */
    @Test
    void theFoundationBalancesForceAndCouple() {
        Random random = new Random(42);
        for (int i = 0; i < 300; i++) {
            double length = 0.005 + 0.1 * random.nextDouble();
            double foundation = Math.pow(10, 5 + 3 * random.nextDouble());
            double wanted = Math.pow(10, -3 + 4 * random.nextDouble());
            double stiffness = foundation / 4 * Math.pow(length / wanted, 4);
            FreeBeam beam = new FreeBeam(length, stiffness, foundation);
            double at = length * random.nextDouble();
            double moment = random.nextDouble() - 0.5;
            double force = 20 * (random.nextDouble() - 0.5);
            FreeBeam.Deflection y = beam.under(at, moment, force);
            double sum = 0;
            double turning = 0;
            int steps = 4000;
            for (int s = 0; s < steps; s++) {
                double x = length * (s + 0.5) / steps;
                sum += foundation * y.at(x) * length / steps;
                turning += foundation * y.at(x) * x * length / steps;
            }
            double size = Math.abs(force) + Math.abs(moment) / length;
            assertThat(sum).as("λ b = %s", beam.lambda() * length).isCloseTo(force, within(2e-3 * size));
            assertThat(turning).isCloseTo(force * at - moment, within(2e-3 * size * length));
        }
    }

    // M. Hetényi, Beams on Elastic Foundation, 1946 (from memory): semi-infinite beam with a force P at its end,
    // y(0) = 2 P λ/k; with a couple M at its end, y(0) = 2 M λ²/k.
    @Test
    void semiInfiniteBeamsLoadedAtTheirEnd() {
        FreeBeam beam = new FreeBeam(0.2, 0.01, 4e5);
        double lambda = beam.lambda();
        assertThat(lambda * 0.2).isGreaterThan(8);
        assertThat(beam.under(0, 0, 3).at(0)).isCloseTo(2 * 3 * lambda / 4e5, within(1e-3 * 6 * lambda / 4e5));
        double lifted = 2 * 0.05 * lambda * lambda / 4e5;
        assertThat(Math.abs(beam.under(0, 0.05, 0).at(0))).isCloseTo(lifted, within(1e-3 * lifted));
    }
}
