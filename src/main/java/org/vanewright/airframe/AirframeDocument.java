package org.vanewright.airframe;

import com.fasterxml.jackson.annotation.JsonCreator;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.RecordContent;

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
 */
public record AirframeDocument(
        String name,
        @Nullable String description,
        @Nullable OperatingBasis operatingBasis,
        @Nullable Masses masses,
        @Nullable Speeds speeds,
        @Nullable Double wingAreaM2,
        List<SurfaceDocument> surfaces,
        boolean invented)
        implements RecordContent {
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public AirframeDocument {
        name = name == null ? "" : name;
        surfaces = Lists.present(surfaces);
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
            @JsonProperty("invented") @Nullable Boolean invented) {
        return new AirframeDocument(
                name, description, operatingBasis, masses, speeds, wingAreaM2, surfaces, Boolean.TRUE.equals(invented));
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
