package org.vanewright.engineering.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.Sections;

class PolarTest {
    private static final SectionFlow FLOW = SectionFlow.of(Sections.naca("2412"), 200);

    @Test
    void sweepsToTheLargestLiftItCanClaim() {
        Polar polar = Polar.sweep(FLOW, FlowCondition.free(3e6), -4, 16, 21);
        assertThat(polar.points()).hasSize(21);
        PolarPoint largest = polar.largestLift().orElseThrow();
        assertThat(largest.liftCoefficient()).isBetween(1.3, 1.7);
        assertThat(largest.claimed()).isTrue();
        PolarPoint last = polar.points().get(20);
        assertThat(last.claimed()).isFalse();
        assertThat(last.profileDragCoefficient()).isNull();
        assertThat(polar.validity()).anyMatch(w -> w.contains("beyond what the method claims"));
        assertThat(polar.sources()).isNotEmpty();
    }

    @Test
    void anAngleOfTheSweepIsTheFlowAtThatAngle() {
        FlowCondition condition = FlowCondition.free(3e6);
        PolarPoint swept = Polar.sweep(FLOW, condition, 0, 6, 7).points().get(3);
        FlowResult alone = FLOW.at(Math.toRadians(3), condition);
        assertThat(swept.liftCoefficient()).isCloseTo(alone.liftCoefficient(), within(2e-3));
        assertThat(swept.profileDragCoefficient()).isCloseTo(alone.profileDragCoefficient(), within(1e-4));
    }

    /** The angles before say where to start: that is what makes a sweep cheaper than its angles one by one. */
    @Test
    void anAngleOfASweepTakesFewPasses() {
        Polar polar = Polar.sweep(FLOW, FlowCondition.free(3e6), -4, 12, 21);
        assertThat(polar.points()).allSatisfy(p -> assertThat(p.residual()).isLessThan(Coupling.TOLERANCE));
        assertThat(polar.points().stream().mapToInt(PolarPoint::iterations).sum())
                .isLessThan(21 * 3);
    }

    @Test
    void refusesBadSweeps() {
        FlowCondition bad = new FlowCondition(0, new Transition(-1.0, null));
        assertThatThrownBy(() -> Polar.sweep(FLOW, bad, 5, -60, 1))
                .isInstanceOfSatisfying(
                        InvalidInputException.class,
                        e -> assertThat(e.problems())
                                .extracting("field")
                                .contains("toDeg", "count", "reynolds", "transition.upperX"));
    }
}
