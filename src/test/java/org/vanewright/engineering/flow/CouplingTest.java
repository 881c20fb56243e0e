package org.vanewright.engineering.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.section.Sections;

class CouplingTest {
    private static final SectionFlow FLOW = SectionFlow.of(Sections.naca("2412"), 200);

    /** Whatever the start, the flow that agrees is the same. */
    @Test
    void theStartMakesNoDifferenceToTheEnd() {
        Coupling coupling = FLOW.coupling(FlowCondition.free(3e6));
        double angle = Math.toRadians(4);
        CoupledFlow cold = coupling.atAngle(angle, null);
        CoupledFlow warm = coupling.atAngle(
                angle, coupling.atAngle(Math.toRadians(6), null).onward());
        assertThat(cold.converged()).isTrue();
        assertThat(warm.converged()).isTrue();
        assertThat(warm.outer().liftCoefficient()).isCloseTo(cold.outer().liftCoefficient(), within(2e-3));
    }

    @Test
    void aPolarIsTheSameEachTime() {
        FlowCondition condition = FlowCondition.free(3e6);
        Polar first = Polar.sweep(FLOW, condition, -4, 12, 21);
        assertThat(IntStream.range(0, 5).parallel().mapToObj(i -> Polar.sweep(FLOW, condition, -4, 12, 21)))
                .allSatisfy(again -> assertThat(again.points()).isEqualTo(first.points()));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4})
    void aShortPolarHasItsAnglesInOrder(int count) {
        Polar polar = Polar.sweep(FLOW, FlowCondition.free(3e6), 0, 6, count);
        assertThat(polar.points())
                .hasSize(count)
                .isSortedAccordingTo((a, b) -> Double.compare(a.angleOfAttackDeg(), b.angleOfAttackDeg()));
    }

    /** A step that the layers are seen to answer is what the law makes of the change that is left. */
    @ParameterizedTest
    @ValueSource(doubles = {-2, 2, 5, 11})
    void theLawOfInteractionIsThatOfThePasses(double angleDeg) {
        FlowCondition tripped = new FlowCondition(3e6, new Transition(0.2, 0.2));
        Coupling coupling = FLOW.coupling(tripped);
        OuterResponse outer = new OuterResponse(FLOW.potential(), false);
        CoupledFlow agreed = FLOW.coupledAt(Math.toRadians(angleDeg), tripped, null);
        double[] at = agreed.displaced();
        double[] step = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            double behind = FLOW.potential().geometry().x[outer.grid.end(i)] - 0.3;
            step[i] = 1e-4 * at[i] * (behind > 0 ? behind * behind : 0);
        }
        double[] before = felt(coupling, outer, agreed, at);
        double[] after = felt(coupling, outer, agreed, sum(at, step, 1));
        double[] left = sum(step, sum(after, before, -1), -1);
        double[] found =
                new Displacement(agreed, outer.grid, 1 / 3e6).interaction(outer).step(left);
        double largest = largest(step);
        assertThat(largest(sum(found, step, -1))).isLessThan(0.1 * largest);
        assertThat(largest(sum(left, step, -1))).isGreaterThan(0.2 * largest);
    }

    private static double[] felt(Coupling coupling, OuterResponse outer, CoupledFlow at, double[] displaced) {
        PanelSolution flow = FLOW.potential().at(at.outer().angleRad(), outer.to(displaced));
        return new Displacement(coupling.pass(flow, displaced), outer.grid, 1 / 3e6).felt();
    }

    private static double[] sum(double[] a, double[] b, double factor) {
        return IntStream.range(0, a.length)
                .mapToDouble(i -> a[i] + factor * b[i])
                .toArray();
    }

    private static double largest(double[] values) {
        return DoubleStream.of(values).map(Math::abs).max().orElseThrow();
    }

    /** A displaced flow without kinks is known everywhere from the grid's places. */
    @Test
    void theOuterFlowAnswersTheGridAsItDoesEveryEnd() {
        PotentialFlow flow = FLOW.potential();
        double[] arc = flow.geometry().arc;
        double[] everywhere = IntStream.range(0, arc.length)
                .mapToDouble(i -> 0.004 * Math.sin(2 * arc[i]))
                .toArray();
        OuterResponse outer = new OuterResponse(flow, true);
        double[] picked = IntStream.range(0, outer.grid.arc().length)
                .mapToDouble(k -> everywhere[outer.grid.end(k)])
                .toArray();
        double[] expected = flow.response(everywhere);
        double[] found = outer.to(picked);
        for (int i = 0; i < found.length; i++) {
            assertThat(found[i]).isCloseTo(expected[i], within(2e-4));
        }
    }
}
