package org.vanewright.bench;

import org.jspecify.annotations.Nullable;

/**
 * One speed at a pressure altitude; exactly one of the three is given.
 *
 * @param pressureAltitudeFt what an altimeter set to 1013.25 hPa shows
 * @param outsideAirTemperatureC static; absent means the standard one
 * @param calibratedAirspeedKt corrected for the errors of the installation and the instrument
 * @param impactPressurePa total less static pressure
 * @param trueAirspeedKt through the air
 */
public record AirspeedRequest(
        @Nullable Double pressureAltitudeFt,
        @Nullable Double outsideAirTemperatureC,
        @Nullable Double calibratedAirspeedKt,
        @Nullable Double impactPressurePa,
        @Nullable Double trueAirspeedKt) {}
