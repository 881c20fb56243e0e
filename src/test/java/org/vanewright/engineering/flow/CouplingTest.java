package org.vanewright.engineering.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
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

    /** The law's linear equations are the smoothed ones of both laws. */
    @Test
    void theLawOfInteractionIsSolved() {
        OuterResponse outer = new OuterResponse(FLOW.potential());
        double[] arc = outer.grid.arc();
        Random chance = new Random(11);
        double[] change = chance.doubles(arc.length).toArray();
        double[] over =
                IntStream.range(0, arc.length).mapToDouble(i -> 1e-4 * i).toArray();
        double[] gain = chance.doubles(arc.length, 0, 0.02).toArray();
        double[] step = new Interaction(outer, Diffusion.diagonals(over, arc), gain).step(change);
        double[] answer = new double[arc.length];
        for (int i = 0; i < answer.length; i++) {
            answer[i] = gain[i] * DenseFactorisation.dot(outer.at(i), step, 0, step.length);
        }
        double[] smoothed = Diffusion.of(answer, over, arc);
        for (int i = 0; i < step.length; i++) {
            assertThat(step[i] - smoothed[i]).isCloseTo(change[i], within(1e-9));
        }
    }

    /** A displaced flow without kinks is known everywhere from the grid's places. */
    @Test
    void theOuterFlowAnswersTheGridAsItDoesEveryEnd() {
        PotentialFlow flow = FLOW.potential();
        double[] arc = flow.geometry().arc;
        double[] everywhere = IntStream.range(0, arc.length)
                .mapToDouble(i -> 0.004 * Math.sin(2 * arc[i]))
                .toArray();
        OuterResponse outer = new OuterResponse(flow);
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
