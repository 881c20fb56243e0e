package org.vanewright.device;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.record.RecordContent;

/**
 * A device as it is recorded: its design parameters beside its name, so that the same JSON serves as input to the
 * calculation of a solid.
 *
 * @param name what people call it
 * @param description what it is for, in the contributor's words
 * @param vane the vane, or either vane of a pair
 * @param pair present when two vanes share the base
 * @param base the plate that is bonded to the skin
 * @param indexMark whether a raised mark shows forward
 * @param chordToleranceMm largest distance between a curve and its facets
 * @param densityKgM3 of the material it is meant to be printed in, for its mass
 * @param invented true for demonstration data
 */
public record DeviceDocument(
        String name,
        @Nullable String description,
        DeviceDesign.@Nullable Vane vane,
        DeviceDesign.@Nullable Pair pair,
        DeviceDesign.@Nullable Base base,
        @Nullable Boolean indexMark,
        @Nullable Double chordToleranceMm,
        @Nullable Double densityKgM3,
        boolean invented)
        implements RecordContent {
    public DeviceDesign design() {
        return new DeviceDesign(vane, pair, base, indexMark, chordToleranceMm);
    }
}
