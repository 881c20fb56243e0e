package org.vanewright.study;

import org.jspecify.annotations.Nullable;

/**
 * The flight condition of a study, as asked for.
 *
 * @param massKg from empty to maximum mass; absent means the maximum mass, where the airframe states one
 * @param pressureAltitudeFt absent means sea level
 * @param outsideAirTemperatureC absent means the standard one
 * @param condition absent means the slowest whose speed the airframe states
 * @param calibratedAirspeedKt for a speed of one's own
 * @param row that is tried elsewhere, by its index; absent means the first
 * @param trial what is tried in its place
 */
public record StudyQuery(
        @Nullable Double massKg,
        @Nullable Double pressureAltitudeFt,
        @Nullable Double outsideAirTemperatureC,
        @Nullable StudyCondition condition,
        @Nullable Double calibratedAirspeedKt,
        @Nullable Integer row,
        Trial trial) {
    /** Nothing but defaults. */
    public static final StudyQuery DEFAULT = new StudyQuery(null, null, null, null, null, null, Trial.NONE);

    /**
     * Another place or proportion for a row; what is absent stays as it is.
     *
     * @param chordFraction x/c of the base centre
     * @param heightMm of the vane
     * @param lengthMm of the vane
     * @param angleDeg to the chordwise direction
     * @param pitchMm along the span
     */
    public record Trial(
            @Nullable Double chordFraction,
            @Nullable Double heightMm,
            @Nullable Double lengthMm,
            @Nullable Double angleDeg,
            @Nullable Double pitchMm) {
        public static final Trial NONE = new Trial(null, null, null, null, null);
    }
}
