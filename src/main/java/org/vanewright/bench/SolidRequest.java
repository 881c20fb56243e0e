package org.vanewright.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.solid.DeviceDesign;
import org.vanewright.record.photograph.PhotographUse;
import org.vanewright.record.provenance.FigureOrigin;

/** A device as it is published, with nothing but the design required. */
public record SolidRequest(
        @Nullable String name,
        @Nullable String description,
        DeviceDesign.@Nullable Vane vane,
        DeviceDesign.@Nullable Pair pair,
        DeviceDesign.@Nullable Base base,
        @Nullable Boolean indexMark,
        @Nullable Double chordToleranceMm,
        @Nullable Double densityKgM3,
        @Nullable Boolean invented,
        @Nullable List<FigureOrigin> provenance,
        @Nullable List<PhotographUse> photographs) {
    private static final String UNNAMED = "Unnamed device";

    public DeviceDocument device() {
        return new DeviceDocument(
                name == null ? UNNAMED : name,
                description,
                vane,
                pair,
                base,
                indexMark,
                chordToleranceMm,
                densityKgM3,
                Boolean.TRUE.equals(invented));
    }
}
