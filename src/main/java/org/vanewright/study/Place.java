package org.vanewright.study;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * A place on a wing, with or without a device.
 *
 * @param index of the row in its layout; 0 where there is none
 * @param name what stands there
 * @param stationMm from the centre line
 * @param side of the surface
 * @param chordFraction x/c
 * @param heightMm of the vane; null without one
 */
public record Place(
        int index,
        String name,
        double stationMm,
        SurfaceSide side,
        double chordFraction,
        @Nullable Double heightMm) {}
