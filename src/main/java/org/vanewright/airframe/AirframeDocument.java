package org.vanewright.airframe;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.Lists;
import org.vanewright.record.RecordContent;
import org.vanewright.record.photograph.PhotographUse;
import org.vanewright.record.provenance.FigureGroup;
import org.vanewright.record.provenance.FigureOrigin;

/**
 * What a revision of an airframe says. Parts may be absent until {@link AirframeRules} has passed it.
 *
 * @param name as the club calls it
 * @param description anything a reader should know
 * @param operatingBasis under which rules it flies
 * @param masses empty and maximum
 * @param speeds calibrated airspeeds
 * @param wingAreaM2 reference area for lift coefficients
 * @param surfaces wings, stabilisers, fins
 * @param invented true for demonstration data
 * @param provenance where its figures come from
 * @param photographs of it
 */
public record AirframeDocument(
        String name,
        @Nullable String description,
        @Nullable OperatingBasis operatingBasis,
        @Nullable Masses masses,
        @Nullable Speeds speeds,
        @Nullable Double wingAreaM2,
        List<SurfaceDocument> surfaces,
        boolean invented,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<FigureOrigin> provenance,
        @JsonInclude(JsonInclude.Include.NON_EMPTY) List<PhotographUse> photographs)
        implements RecordContent {
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public AirframeDocument {
        name = name == null ? "" : name;
        surfaces = Lists.present(surfaces);
        provenance = Lists.present(provenance);
        photographs = Lists.present(photographs);
    }

    /** One that says nothing of origins and has no photographs. */
    public AirframeDocument(
            String name,
            @Nullable String description,
            @Nullable OperatingBasis operatingBasis,
            @Nullable Masses masses,
            @Nullable Speeds speeds,
            @Nullable Double wingAreaM2,
            List<SurfaceDocument> surfaces,
            boolean invented) {
        this(name, description, operatingBasis, masses, speeds, wingAreaM2, surfaces, invented, List.of(), List.of());
    }

    /** As read from JSON, where {@code invented} may be left out and then is false. */
    @JsonCreator(mode = JsonCreator.Mode.PROPERTIES)
    @SuppressWarnings("NullAway") // the canonical constructor takes what is absent
    static AirframeDocument read(
            @JsonProperty("name") @Nullable String name,
            @JsonProperty("description") @Nullable String description,
            @JsonProperty("operatingBasis") @Nullable OperatingBasis operatingBasis,
            @JsonProperty("masses") @Nullable Masses masses,
            @JsonProperty("speeds") @Nullable Speeds speeds,
            @JsonProperty("wingAreaM2") @Nullable Double wingAreaM2,
            @JsonProperty("surfaces") @Nullable List<SurfaceDocument> surfaces,
            @JsonProperty("invented") @Nullable Boolean invented,
            @JsonProperty("provenance") @Nullable List<FigureOrigin> provenance,
            @JsonProperty("photographs") @Nullable List<PhotographUse> photographs) {
        return new AirframeDocument(
                name,
                description,
                operatingBasis,
                masses,
                speeds,
                wingAreaM2,
                surfaces,
                Boolean.TRUE.equals(invented),
                provenance,
                photographs);
    }

    @Override
    public List<FigureGroup> figureGroups() {
        return AirframeFigures.of(this);
    }

    /**
     * @param emptyKg empty mass
     * @param maximumKg maximum take-off mass; a limit of the aircraft, never raised by anything fitted to it
     */
    public record Masses(@Nullable Double emptyKg, @Nullable Double maximumKg) {}

    /**
     * Calibrated airspeeds.
     *
     * @param vs0Kt stall, landing configuration; absent where there are no flaps
     * @param vs1Kt stall, clean
     * @param vaKt manoeuvring
     * @param vneKt never exceed
     * @param approachKt typical approach
     * @param cruiseKt typical cruise
     */
    public record Speeds(
            @Nullable Double vs0Kt,
            @Nullable Double vs1Kt,
            @Nullable Double vaKt,
            @Nullable Double vneKt,
            @Nullable Double approachKt,
            @Nullable Double cruiseKt) {}
}
