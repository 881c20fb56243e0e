package org.vanewright.device;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.record.Lists;
import org.vanewright.record.RecordContent;
import org.vanewright.record.photograph.PhotographUse;
import org.vanewright.record.provenance.FigureGroup;
import org.vanewright.record.provenance.FigureOrigin;

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
 * @param provenance where its figures come from
 * @param photographs of it
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
        boolean invented,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<FigureOrigin> provenance,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<PhotographUse> photographs)
        implements RecordContent {
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public DeviceDocument {
        name = name == null ? "" : name;
        provenance = Lists.present(provenance);
        photographs = Lists.present(photographs);
    }

    /** One that says nothing of origins and has no photographs. */
    public DeviceDocument(
            String name,
            @Nullable String description,
            DeviceDesign.@Nullable Vane vane,
            DeviceDesign.@Nullable Pair pair,
            DeviceDesign.@Nullable Base base,
            @Nullable Boolean indexMark,
            @Nullable Double chordToleranceMm,
            @Nullable Double densityKgM3,
            boolean invented) {
        this(
                name,
                description,
                vane,
                pair,
                base,
                indexMark,
                chordToleranceMm,
                densityKgM3,
                invented,
                List.of(),
                List.of());
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
            @JsonProperty("invented") @Nullable Boolean invented,
            @JsonProperty("provenance") @Nullable List<FigureOrigin> provenance,
            @JsonProperty("photographs") @Nullable List<PhotographUse> photographs) {
        return new DeviceDocument(
                name,
                description,
                vane,
                pair,
                base,
                indexMark,
                chordToleranceMm,
                densityKgM3,
                Boolean.TRUE.equals(invented),
                provenance,
                photographs);
    }

    @Override
    public List<FigureGroup> figureGroups() {
        List<FigureGroup> groups = new ArrayList<>();
        groups.add(new FigureGroup("vane", pair == null ? "Vane" : "Each vane"));
        if (pair != null) {
            groups.add(new FigureGroup("pair", "Pair: angle and gap"));
        }
        groups.add(new FigureGroup("base", "Base"));
        if (densityKgM3 != null) {
            groups.add(new FigureGroup("densityKgM3", "Density of the material"));
        }
        return List.copyOf(groups);
    }

    public DeviceDesign design() {
        return new DeviceDesign(vane, pair, base, indexMark, chordToleranceMm);
    }
}
