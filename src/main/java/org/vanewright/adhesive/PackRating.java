package org.vanewright.adhesive;

import org.jspecify.annotations.Nullable;

/**
 * What a pack claims to hold. Recorded as printed, never calculated with: it names no area, no time, no temperature and no
 * direction.
 *
 * @param pounds as on the pack
 * @param words as on the pack
 */
public record PackRating(@Nullable Double pounds, @Nullable String words) {}
