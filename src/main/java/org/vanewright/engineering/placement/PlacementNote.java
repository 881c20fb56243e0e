package org.vanewright.engineering.placement;

import org.jspecify.annotations.Nullable;

/**
 * A unit that could not sit where the row asked for it.
 *
 * @param row index of the row
 * @param requestedMm span station asked for
 * @param movedToMm span station it went to; null when it was left out
 * @param reason what was in the way
 */
public record PlacementNote(
        int row, double requestedMm, @Nullable Double movedToMm, String reason) {}
