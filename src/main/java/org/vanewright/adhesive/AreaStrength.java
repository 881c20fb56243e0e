package org.vanewright.adhesive;

import org.jspecify.annotations.Nullable;

/**
 * A strength over an area: shear or tensile.
 *
 * @param strengthKPa force for each area
 * @param method how it was measured
 */
public record AreaStrength(
        @Nullable Double strengthKPa, @Nullable TestMethod method) {}
