package org.vanewright.installation;

import org.jspecify.annotations.Nullable;

/**
 * A device that was measured after it was stuck on. At least one of the figures is there.
 *
 * @param at which one
 * @param chordPositionMm centre of its base, along the skin from the leading edge, as a tape measure reads
 * @param angleDeg of the vane to the local chordwise direction, toe-in positive
 * @param heightMm of the vane above its base
 */
public record SampleDocument(
        @Nullable DeviceAt at,
        @Nullable Double chordPositionMm,
        @Nullable Double angleDeg,
        @Nullable Double heightMm) {}
