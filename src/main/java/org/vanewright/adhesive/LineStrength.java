package org.vanewright.adhesive;

import org.jspecify.annotations.Nullable;

/**
 * A strength along a line: peel or cleavage.
 *
 * @param strengthNPerCm force for each centimetre of width
 * @param method how it was measured
 */
public record LineStrength(
        @Nullable Double strengthNPerCm, @Nullable TestMethod method) {}
