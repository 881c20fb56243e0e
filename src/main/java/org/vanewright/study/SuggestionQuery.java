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
 * @param recommendations ids of those that count; empty means all
 * @param massKg as in a study
 * @param pressureAltitudeFt as in a study
 */
public record SuggestionQuery(
        int row,
        double leastFraction,
        double mostFraction,
        Set<String> recommendations,
        @Nullable Double massKg,
        @Nullable Double pressureAltitudeFt) {
    /** Conditions that are looked at, where the airframe states their speed. */
    static final List<StudyCondition> CONDITIONS =
            List.of(StudyCondition.STALL, StudyCondition.APPROACH, StudyCondition.CRUISE);

    /** @throws org.vanewright.engineering.input.InvalidInputException naming the field */
    void check() {
        Checks checks = new Checks();
        checks.range("leastFraction", leastFraction, 0.01, 0.8, "");
        checks.range("mostFraction", mostFraction, 0.01, 0.8, "");
        checks.require(
                !(mostFraction < leastFraction), "mostFraction", mostFraction, "no smaller than the fraction in front");
        checks.throwIfAny();
    }

    StudyQuery at(StudyCondition condition) {
        return new StudyQuery(massKg, pressureAltitudeFt, null, condition, null, row, StudyQuery.Trial.NONE);
    }
}
