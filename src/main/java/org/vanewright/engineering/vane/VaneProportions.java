package org.vanewright.engineering.vane;

import org.jspecify.annotations.Nullable;

/**
 * The ratios in which recommendations speak of a row of vanes.
 *
 * @param heightToThickness height over the thickness of the boundary layer at the device; null behind separation
 * @param lengthToHeight length of a vane over its height
 * @param angleDeg to the local flow, without sign
 * @param pitchToHeight from one device, or middle of a pair, to the next over the height
 * @param gapToHeight between the trailing edges of a pair over the height; null for co-rotating rows
 * @param distanceToHeight along the skin to where the turbulent layer separates, over the height; null where none does,
 *     negative where the device stands behind it
 * @param chordFraction x/c of the device
 * @param deviceReynolds edge speed times height over kinematic viscosity
 */
public record VaneProportions(
        @Nullable Double heightToThickness,
        double lengthToHeight,
        double angleDeg,
        double pitchToHeight,
        @Nullable Double gapToHeight,
        @Nullable Double distanceToHeight,
        double chordFraction,
        double deviceReynolds) {}
