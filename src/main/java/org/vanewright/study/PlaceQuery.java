package org.vanewright.study;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * A place on an airframe that carries no row, as asked for.
 *
 * @param surface index of the surface
 * @param panel index of its panel, at whose middle it is looked where no station is given
 * @param stationMm from the centre line
 * @param side of the surface
 * @param flight the flight condition; its trial is the device that is imagined there, none where it has no height
 */
public record PlaceQuery(int surface, int panel, @Nullable Double stationMm, SurfaceSide side, StudyQuery flight) {
    /** Where nothing is said of the place along the chord: common practice, no source; so are those below. */
    public static final double USUAL_FRACTION = 0.08;

    /** Length over height. */
    public static final double USUAL_LENGTH = 2.5;

    /** Pitch over height. */
    public static final double USUAL_PITCH = 10;

    public static final double USUAL_ANGLE_DEG = 15;
}
