package org.vanewright.engineering.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.SectionSpec;

class FlowTest {
    private static FlowRequest at(double degrees, @Nullable Transition transition) {
        return new FlowRequest(SectionSpec.naca("2412"), degrees, null, 3e6, null, transition, null);
    }

    @Test
    void answersWithBothSidesFromTheStagnationPoint() {
        FlowResult flow = Flow.run(at(4, null));
        assertThat(flow.angleOfAttackDeg()).isCloseTo(4, within(1e-9));
        assertThat(flow.liftCoefficient()).isBetween(0.60, 0.70);
        assertThat(flow.profileDragCoefficient()).isBetween(0.006, 0.009);
        assertThat(flow.coupling()).isNotNull();
        for (SideFlow side : List.of(flow.upper(), flow.lower())) {
            List<LayerStation> stations = side.stations();
            assertThat(stations.get(0).speedRatio()).isZero();
            assertThat(stations.get(0).arcLength()).isZero();
            assertThat(stations).isSortedAccordingTo((a, b) -> Double.compare(a.arcLength(), b.arcLength()));
            assertThat(stations.get(stations.size() - 1).x()).isCloseTo(1, within(1e-3));
            assertThat(side.transitionX()).isBetween(0.05, 0.9);
        }
        assertThat(flow.method()).contains("Thwaites", "Michel", "Head", "Squire");
        assertThat(flow.sources()).hasSizeGreaterThan(5);
    }

    @Test
    void stationsAreConsistent() {
        for (LayerStation s : Flow.run(at(4, null)).upper().stations()) {
            assertThat(s.pressureCoefficient()).isCloseTo(1 - s.speedRatio() * s.speedRatio(), within(1e-12));
            double displacement = present(s.displacementThickness());
            assertThat(present(s.thickness())).isGreaterThan(displacement);
            assertThat(present(s.shapeFactor()) * present(s.momentumThickness()))
                    .isCloseTo(displacement, within(1e-12));
        }
    }

    private static double present(@Nullable Double figure) {
        assertThat(figure).isNotNull();
        return figure == null ? Double.NaN : figure;
    }

    @Test
    void findsTheAngleOfALift() {
        FlowResult flow = Flow.run(new FlowRequest(SectionSpec.naca("2412"), null, 0.5, 3e6, 160, null, false));
        assertThat(flow.liftCoefficient()).isCloseTo(0.5, within(1e-6));
        FlowResult back = Flow.run(
                new FlowRequest(SectionSpec.naca("2412"), flow.angleOfAttackDeg(), null, 3e6, 160, null, null));
        assertThat(back.liftCoefficient()).isCloseTo(0.5, within(2e-3));
    }

    @Test
    void inviscidFlowHasNoLayer() {
        FlowResult flow = Flow.run(new FlowRequest(SectionSpec.naca("0012"), 5.0, null, null, null, null, true));
        assertThat(flow.profileDragCoefficient()).isNull();
        assertThat(flow.coupling()).isNull();
        assertThat(flow.upper().transitionX()).isNull();
        assertThat(flow.upper().stations()).allSatisfy(s -> {
            assertThat(s.thickness()).isNull();
            assertThat(s.regime()).isNull();
        });
        FlowResult lift = Flow.run(new FlowRequest(SectionSpec.naca("0012"), null, 0.6, null, null, null, true));
        assertThat(lift.liftCoefficient()).isCloseTo(0.6, within(2e-3));
    }

    @Test
    void transitionStandsWhereItIsFixed() {
        FlowResult flow = Flow.run(at(2, new Transition(0.1, 0.3)));
        assertThat(flow.upper().transitionX()).isCloseTo(0.1, within(1e-3));
        assertThat(flow.lower().transitionX()).isCloseTo(0.3, within(1e-3));
        assertThat(flow.profileDragCoefficient())
                .isGreaterThan(Flow.run(at(2, null)).profileDragCoefficient());
    }

    @Test
    void stopsClaimingBehindSeparation() {
        FlowResult flow = Flow.run(at(16, null));
        assertThat(flow.upper().separationX()).isBetween(0.6, 0.88);
        assertThat(flow.profileDragCoefficient()).isNull();
        assertThat(flow.validity()).anyMatch(w -> w.contains("not claimed"));
        assertThat(flow.upper().stations())
                .filteredOn(s -> s.regime() == Regime.SEPARATED)
                .isNotEmpty()
                .allSatisfy(s -> {
                    assertThat(s.shapeFactor()).isNull();
                    assertThat(s.skinFrictionCoefficient()).isNull();
                });
    }

    @Test
    void warnsOutsideTheLaws() {
        FlowResult slow = Flow.run(new FlowRequest(SectionSpec.naca("2412"), 2.0, null, 1e5, null, null, null));
        assertThat(slow.validity()).anyMatch(w -> w.contains("3e5"));
    }

    @Test
    void refusesEveryBadField() {
        FlowRequest bad = new FlowRequest(
                SectionSpec.naca("2412"), 40.0, Double.NaN, -1.0, 1000, new Transition(2.0, Double.NaN), null);
        assertThatThrownBy(() -> Flow.run(bad))
                .isInstanceOfSatisfying(
                        InvalidInputException.class,
                        e -> assertThat(e.problems())
                                .extracting("field")
                                .containsOnly(
                                        "liftCoefficient",
                                        "angleOfAttackDeg",
                                        "reynolds",
                                        "panels",
                                        "transition.upperX",
                                        "transition.lowerX"));
    }

    @Test
    void refusesMissingFields() {
        assertThatThrownBy(() -> Flow.run(new FlowRequest(null, null, null, null, null, null, null)))
                .isInstanceOfSatisfying(
                        InvalidInputException.class,
                        e -> assertThat(e.problems())
                                .extracting("field")
                                .containsExactly("section", "angleOfAttackDeg", "reynolds"));
    }
}
