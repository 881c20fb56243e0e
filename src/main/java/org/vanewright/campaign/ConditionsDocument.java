package org.vanewright.campaign;

import org.jspecify.annotations.Nullable;

/**
 * Under which conditions test points count.
 *
 * @param flaps their setting
 * @param power its setting, such as idle
 * @param centreOfGravity where it is, such as forward of the middle
 * @param lowestFt pressure altitude below which nothing is flown
 * @param highestFt pressure altitude above which nothing is flown
 * @param standardMassKg mass to which results are brought; never more than the aircraft's maximum
 */
public record ConditionsDocument(
        @Nullable String flaps,
        @Nullable String power,
        @Nullable String centreOfGravity,
        @Nullable Double lowestFt,
        @Nullable Double highestFt,
        @Nullable Double standardMassKg) {
    static final ConditionsDocument NONE = new ConditionsDocument(null, null, null, null, null, null);
}
