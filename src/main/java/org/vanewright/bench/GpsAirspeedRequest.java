package org.vanewright.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Straight legs flown at one airspeed in one wind.
 *
 * @param legs three or more, all with tracks or all with headings
 */
public record GpsAirspeedRequest(@Nullable List<@Nullable Leg> legs) {
    /**
     * One leg.
     *
     * @param groundSpeedKt mean over the leg
     * @param trackDeg track over the ground, true; absent where headings are given
     * @param headingDeg heading, true; absent where tracks are given
     */
    public record Leg(
            @Nullable Double groundSpeedKt,
            @Nullable Double trackDeg,
            @Nullable Double headingDeg) {}
}
