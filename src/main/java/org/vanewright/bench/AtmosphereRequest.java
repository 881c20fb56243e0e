package org.vanewright.bench;

import org.jspecify.annotations.Nullable;

/**
 * Air at a pressure altitude.
 *
 * @param pressureAltitudeFt what an altimeter set to 1013.25 hPa shows
 * @param outsideAirTemperatureC static; absent means the standard one
 */
public record AtmosphereRequest(
        @Nullable Double pressureAltitudeFt, @Nullable Double outsideAirTemperatureC) {}
