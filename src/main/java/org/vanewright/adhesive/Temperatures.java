package org.vanewright.adhesive;

import org.jspecify.annotations.Nullable;

/**
 * A range of temperatures; either end may be unknown.
 *
 * @param lowestC coldest
 * @param highestC hottest
 */
public record Temperatures(
        @Nullable Double lowestC, @Nullable Double highestC) {}
