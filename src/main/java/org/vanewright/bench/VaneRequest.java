package org.vanewright.bench;

import org.jspecify.annotations.Nullable;

/**
 * One vane in a boundary layer.
 *
 * @param heightMm above the skin
 * @param lengthMm at its root
 * @param angleDeg to the local flow
 * @param edgeSpeedMps at the edge of the boundary layer
 * @param boundaryLayerThicknessMm to 99 % of that speed
 */
public record VaneRequest(
        @Nullable Double heightMm,
        @Nullable Double lengthMm,
        @Nullable Double angleDeg,
        @Nullable Double edgeSpeedMps,
        @Nullable Double boundaryLayerThicknessMm) {}
