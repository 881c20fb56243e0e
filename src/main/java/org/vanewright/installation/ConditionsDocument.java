package org.vanewright.installation;

import org.jspecify.annotations.Nullable;

/**
 * Under which conditions devices were stuck on.
 *
 * @param skinTemperatureC of the skin, not of the air
 * @param relativeHumidityPercent of the air
 * @param surfaceFinish what they were stuck to
 */
public record ConditionsDocument(
        @Nullable Double skinTemperatureC,
        @Nullable Double relativeHumidityPercent,
        @Nullable SurfaceFinish surfaceFinish) {
    static final ConditionsDocument NONE = new ConditionsDocument(null, null, null);
}
