package org.vanewright.bench;

import org.jspecify.annotations.Nullable;

/**
 * A change worth finding.
 *
 * @param standardDeviation of single values
 * @param difference the change, of either sign, in the same unit
 * @param significance of the two-sided test; absent for 0.05
 * @param power wanted; absent for 0.8
 */
public record SampleSizeRequest(
        @Nullable Double standardDeviation,
        @Nullable Double difference,
        @Nullable Double significance,
        @Nullable Double power) {}
