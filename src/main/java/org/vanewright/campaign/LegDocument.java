package org.vanewright.campaign;

import org.jspecify.annotations.Nullable;

/**
 * One leg flown straight at one indicated airspeed.
 *
 * @param groundSpeedKt by satellite
 * @param trackDeg true track over the ground; absent where the heading is given
 * @param headingDeg true heading; absent where the track is given
 */
public record LegDocument(
        @Nullable Double groundSpeedKt,
        @Nullable Double trackDeg,
        @Nullable Double headingDeg) {}
