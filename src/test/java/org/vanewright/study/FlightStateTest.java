package org.vanewright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeDocument.Masses;
import org.vanewright.airframe.AirframeDocument.Speeds;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/** What an airframe does not state is asked for, and nothing is made up. */
class FlightStateTest {
    private static final Masses MASSES = new Masses(250.0, 450.0);
    private static final Speeds SPEEDS = new Speeds(null, 38.0, null, 100.0, null, 70.0);
    private static final Speeds WITHOUT_STALL = new Speeds(null, null, null, 100.0, 50.0, 70.0);

    private static AirframeDocument airframe(@Nullable Masses masses, @Nullable Speeds speeds) {
        return new AirframeDocument("Invented", null, null, masses, speeds, 13.0, List.of(), true);
    }

    private static StudyQuery query(@Nullable Double massKg, @Nullable StudyCondition condition, @Nullable Double kt) {
        return new StudyQuery(massKg, null, null, condition, kt, null, StudyQuery.Trial.NONE);
    }

    private static Map<String, String> refused(AirframeDocument airframe, StudyQuery query) {
        InvalidInputException found =
                catchThrowableOfType(InvalidInputException.class, () -> FlightState.of(airframe, query));
        assertThat(found).isNotNull();
        return found.problems().stream().collect(Collectors.toMap(FieldProblem::field, FieldProblem::allowed));
    }

    @Test
    void whatIsStatedNeedsNotBeTyped() {
        FlightState state = FlightState.of(airframe(MASSES, SPEEDS), StudyQuery.DEFAULT);
        assertThat(state.massKg()).isEqualTo(450);
        assertThat(state.condition()).isEqualTo(StudyCondition.STALL);
        assertThat(state.speeds().calibratedAirspeedKt()).isCloseTo(38, within(1e-9));
    }

    @Test
    void withoutAStallingSpeedTheSlowestOtherIsTaken() {
        FlightState state = FlightState.of(airframe(MASSES, WITHOUT_STALL), StudyQuery.DEFAULT);
        assertThat(state.condition()).isEqualTo(StudyCondition.APPROACH);
        assertThat(state.speeds().calibratedAirspeedKt()).isCloseTo(50, within(1e-9));
        assertThat(StudyCondition.possible(WITHOUT_STALL))
                .containsExactly(StudyCondition.APPROACH, StudyCondition.CRUISE, StudyCondition.SPEED);
        assertThat(refused(airframe(MASSES, WITHOUT_STALL), query(null, StudyCondition.STALL, null)))
                .containsOnlyKeys("condition");
    }

    @Test
    void withoutMassesAndSpeedsBothAreAskedForAtOnce() {
        AirframeDocument bare = airframe(null, null);
        Map<String, String> asked = refused(bare, StudyQuery.DEFAULT);
        assertThat(asked).containsOnlyKeys("massKg", "calibratedAirspeedKt");
        assertThat(asked.get("massKg")).contains("states no maximum");
        assertThat(asked.get("calibratedAirspeedKt")).contains("states none");

        FlightState typed = FlightState.of(bare, query(430.0, null, 45.0));
        assertThat(typed.massKg()).isEqualTo(430);
        assertThat(typed.speeds().calibratedAirspeedKt()).isCloseTo(45, within(1e-9));
        assertThat(refused(bare, query(6000.0, null, Double.NaN))).containsOnlyKeys("massKg", "calibratedAirspeedKt");
    }

    @Test
    void aStatedMaximumIsNeverExceeded() {
        assertThat(refused(airframe(MASSES, SPEEDS), query(451.0, null, null)).get("massKg"))
                .contains("to the maximum of 450 kg");
        assertThat(refused(airframe(new Masses(250.0, null), SPEEDS), query(200.0, null, null))
                        .get("massKg"))
                .contains("from 250");
    }
}
