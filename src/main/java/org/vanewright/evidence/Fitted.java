package org.vanewright.evidence;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * Where the devices of a flown layout stand. Of several rows it is the one with the most vanes, the first of equals.
 *
 * @param row its name
 * @param surface that carries it
 * @param side of the surface; null where the layout does not say
 * @param chordFraction x/c at its middle device; null where only a distance along the skin is known
 * @param heightMm of its vanes; null where the flow could not be computed
 * @param heightOverThickness over the boundary layer's thickness there by the placement study: in level flight at the stated
 *     clean stalling speed, maximum mass, sea level; null where the airframe states too little or the layer is separated
 * @param rows how many the layout has
 */
public record Fitted(
        String row,
        String surface,
        @Nullable SurfaceSide side,
        @Nullable Double chordFraction,
        @Nullable Double heightMm,
        @Nullable Double heightOverThickness,
        int rows) {}
