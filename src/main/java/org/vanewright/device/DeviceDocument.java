package org.vanewright.device;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonProperty;
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
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public DeviceDocument {
        name = name == null ? "" : name;
    }

    /** As read from JSON, where {@code invented} may be left out and then is false. */
    @JsonCreator(mode = JsonCreator.Mode.PROPERTIES)
    @SuppressWarnings("NullAway") // the canonical constructor takes what is absent
    static DeviceDocument read(
            @JsonProperty("name") @Nullable String name,
            @JsonProperty("description") @Nullable String description,
            @JsonProperty("vane") DeviceDesign.@Nullable Vane vane,
            @JsonProperty("pair") DeviceDesign.@Nullable Pair pair,
            @JsonProperty("base") DeviceDesign.@Nullable Base base,
            @JsonProperty("indexMark") @Nullable Boolean indexMark,
            @JsonProperty("chordToleranceMm") @Nullable Double chordToleranceMm,
            @JsonProperty("densityKgM3") @Nullable Double densityKgM3,
            @JsonProperty("invented") @Nullable Boolean invented) {
        return new DeviceDocument(
                name,
                description,
                vane,
                pair,
                base,
                indexMark,
                chordToleranceMm,
                densityKgM3,
                Boolean.TRUE.equals(invented));
    }

    public DeviceDesign design() {
        return new DeviceDesign(vane, pair, base, indexMark, chordToleranceMm);
    }
}
