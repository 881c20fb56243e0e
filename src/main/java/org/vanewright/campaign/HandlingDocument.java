package org.vanewright.campaign;

import org.jspecify.annotations.Nullable;

/**
 * What a pilot says of one task in one configuration.
 *
 * @param configuration key of the configuration flown
 * @param task what was flown, such as a turn at 1.3 times the stall speed
 * @param rating on the Cooper-Harper scale, 1 to 10; ordinal, so never averaged
 * @param remark in the pilot's words
 */
public record HandlingDocument(
        @Nullable String configuration,
        @Nullable String task,
        @Nullable Integer rating,
        @Nullable String remark) {}
