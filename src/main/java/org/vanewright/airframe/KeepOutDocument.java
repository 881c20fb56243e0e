package org.vanewright.airframe;

import org.jspecify.annotations.Nullable;

/**
 * A span interval where no device may sit.
 *
 * @param fromMm inner span station
 * @param toMm outer span station
 * @param side on which skin
 * @param reason such as a stall-warning vane, a fuel vent, a strut fitting, a walkway
 */
public record KeepOutDocument(
        @Nullable Double fromMm,
        @Nullable Double toMm,
        @Nullable KeepOutSide side,
        @Nullable String reason) {}
