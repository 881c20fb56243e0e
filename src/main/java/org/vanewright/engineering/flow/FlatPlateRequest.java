package org.vanewright.engineering.flow;

import org.jspecify.annotations.Nullable;

/**
 * A place on a flat plate along the flow.
 *
 * @param speedMps free-stream speed
 * @param distanceM from the leading edge
 * @param kinematicViscosityM2S that of the standard atmosphere at sea level if absent
 * @param regime laminar or turbulent, from the leading edge
 */
public record FlatPlateRequest(
        @Nullable Double speedMps,
        @Nullable Double distanceM,
        @Nullable Double kinematicViscosityM2S,
        @Nullable PlateRegime regime) {

    /** State of the layer on a plate. */
    public enum PlateRegime {
        LAMINAR,
        TURBULENT
    }
}
