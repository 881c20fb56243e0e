package org.vanewright.study;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;

/**
 * Within what a row is looked for.
 *
 * @param row of the layout whose place along the span and arrangement it takes, by index
 * @param leastFraction x/c at the front
 * @param mostFraction x/c at the rear, such as ahead of a spar line
 * @param leastPitchMm null for no limit
 * @param mostPitchMm null for no limit
 * @param leastAngleDeg null for no limit; a pair on one base has its own angle, which must lie within, too
 * @param mostAngleDeg null for no limit
 * @param devices slugs of those that are tried; empty means all that are published
 * @param recommendations ids of those that count; empty means all
 * @param massKg as in a study
 * @param pressureAltitudeFt as in a study
 */
public record SuggestionQuery(
        int row,
        double leastFraction,
        double mostFraction,
        @Nullable Double leastPitchMm,
        @Nullable Double mostPitchMm,
        @Nullable Double leastAngleDeg,
        @Nullable Double mostAngleDeg,
        Set<String> devices,
        Set<String> recommendations,
        @Nullable Double massKg,
        @Nullable Double pressureAltitudeFt) {
    /** Conditions that are looked at, where the airframe states their speed. */
    static final List<StudyCondition> CONDITIONS =
            List.of(StudyCondition.STALL, StudyCondition.APPROACH, StudyCondition.CRUISE);

    private static final double LEAST_PITCH_MM = 5;
    private static final double MOST_PITCH_MM = 1000;
    private static final double MOST_ANGLE_DEG = 45;

    /** @throws org.vanewright.engineering.input.InvalidInputException naming the field */
    void check() {
        Checks checks = new Checks();
        checks.range("leastFraction", leastFraction, 0.01, 0.8, "");
        checks.range("mostFraction", mostFraction, 0.01, 0.8, "");
        checks.require(
                !(mostFraction < leastFraction), "mostFraction", mostFraction, "no smaller than the fraction in front");
        checks.optionalRange("leastPitchMm", leastPitchMm, LEAST_PITCH_MM, MOST_PITCH_MM, "mm");
        checks.optionalRange("mostPitchMm", mostPitchMm, LEAST_PITCH_MM, MOST_PITCH_MM, "mm");
        checks.require(inOrder(leastPitchMm, mostPitchMm), "mostPitchMm", mostPitchMm, "no less than the least pitch");
        checks.optionalRange("leastAngleDeg", leastAngleDeg, 0, MOST_ANGLE_DEG, "°");
        checks.optionalRange("mostAngleDeg", mostAngleDeg, 0, MOST_ANGLE_DEG, "°");
        checks.require(
                inOrder(leastAngleDeg, mostAngleDeg), "mostAngleDeg", mostAngleDeg, "no less than the least angle");
        checks.throwIfAny();
    }

    private static boolean inOrder(@Nullable Double least, @Nullable Double most) {
        return least == null || most == null || least <= most;
    }

    StudyQuery at(StudyCondition condition) {
        return new StudyQuery(massKg, pressureAltitudeFt, null, condition, null, row, StudyQuery.Trial.NONE);
    }
}
