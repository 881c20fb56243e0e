package org.vanewright.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Two configurations flown independently.
 *
 * @param baseline two or more values of the unmodified aircraft
 * @param modified two or more values of the other
 * @param confidence of the interval; absent for 0.95
 */
public record ComparisonRequest(
        @Nullable List<@Nullable Double> baseline,
        @Nullable List<@Nullable Double> modified,
        @Nullable Double confidence) {}
