package org.vanewright.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ScheduleTest {
    private static Schedule schedule(FlyingOrder order, int each, int together, int seed) {
        PlanDocument plan = Campaigns.plan(Measure.STALL_SPEED, order);
        RepeatsDocument repeats = new RepeatsDocument(0.8, 1.2, null, null, each, together, order, seed);
        return Schedule.of(new PlanDocument(
                        plan.airframe(),
                        plan.measure(),
                        plan.configurations(),
                        plan.conditions(),
                        plan.instruments(),
                        plan.roles(),
                        repeats,
                        plan.calibration()))
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource(FlyingOrder.class)
    void everyConfigurationIsFlownAsOftenAsPlannedAndTheUnmodifiedOneFirst(FlyingOrder order) {
        for (int seed = 0; seed < 40; seed++) {
            Schedule schedule = schedule(order, 7, 2, seed);
            Map<String, Integer> flown = schedule.sorties().stream()
                    .collect(Collectors.groupingBy(
                            Schedule.Sortie::key, Collectors.summingInt(Schedule.Sortie::points)));
            assertThat(flown).isEqualTo(Map.of("A", 7, "B", 7));
            assertThat(schedule.sorties().get(0).key()).isEqualTo("A");
            assertThat(schedule.sorties()).allMatch(s -> s.points() >= 1 && s.points() <= 2);
        }
    }

    @Test
    void eachBlockHoldsEveryConfigurationOnce() {
        Map<Integer, List<String>> blocks = schedule(FlyingOrder.RANDOMISED_BLOCKS, 12, 2, 22).sorties().stream()
                .collect(Collectors.groupingBy(
                        Schedule.Sortie::block, Collectors.mapping(Schedule.Sortie::key, Collectors.toList())));
        assertThat(blocks).hasSize(6);
        blocks.values().forEach(keys -> assertThat(keys).containsExactlyInAnyOrder("A", "B"));
    }

    @Test
    void theSameSeedDrawsTheSameOrderAndAnotherOneAnother() {
        assertThat(schedule(FlyingOrder.RANDOMISED_BLOCKS, 12, 1, 5))
                .isEqualTo(schedule(FlyingOrder.RANDOMISED_BLOCKS, 12, 1, 5));
        assertThat(schedule(FlyingOrder.RANDOMISED_BLOCKS, 12, 1, 5).sorties())
                .isNotEqualTo(schedule(FlyingOrder.RANDOMISED_BLOCKS, 12, 1, 6).sorties());
    }

    @Test
    void aPlanThatDoesNotSayHowManyHasNoOrder() {
        assertThat(Schedule.of(PlanDocument.NONE)).isEmpty();
    }
}
