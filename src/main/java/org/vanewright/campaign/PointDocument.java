package org.vanewright.campaign;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A test point as it was read. Nothing in it is corrected.
 *
 * @param id made where it was recorded, so that one sent twice counts once
 * @param kind what it is
 * @param configuration key of the configuration flown
 * @param sortie number of the flight
 * @param block number of the block of the order of flying it belongs to; absent where there are none
 * @param at when, as {@code 2026-05-02T09:14:00Z}
 * @param indicatedAirspeedKt as read: of a stall its lowest, else steady
 * @param pressureAltitudeFt with the altimeter set to 1013.25 hPa
 * @param outsideAirTemperatureC as read
 * @param massKg of the aircraft then; absent where start mass and fuel used are given
 * @param startMassKg at the start of the flight
 * @param fuelUsedKg since then
 * @param loadFactor read at the break; absent counts as 1
 * @param entryRateKtPerS mean slowing down from 1.1 times the stall speed, positive
 * @param warningAirspeedKt indicated airspeed at the first warning of a stall
 * @param wingDropDeg largest bank in the stall
 * @param powerPercent of the engine's rated power, in cruise and climb
 * @param climbRateFtPerMin of pressure altitude
 * @param legs of an airspeed calibration
 * @param remark anything else
 * @param source how it came here
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record PointDocument(
        @Nullable String id,
        @Nullable PointKind kind,
        @Nullable String configuration,
        @Nullable Integer sortie,
        @Nullable Integer block,
        @Nullable String at,
        @Nullable Double indicatedAirspeedKt,
        @Nullable Double pressureAltitudeFt,
        @Nullable Double outsideAirTemperatureC,
        @Nullable Double massKg,
        @Nullable Double startMassKg,
        @Nullable Double fuelUsedKg,
        @Nullable Double loadFactor,
        @Nullable Double entryRateKtPerS,
        @Nullable Double warningAirspeedKt,
        @Nullable Double wingDropDeg,
        @Nullable Double powerPercent,
        @Nullable Double climbRateFtPerMin,
        List<LegDocument> legs,
        @Nullable String remark,
        @Nullable PointSource source) {
    @SuppressWarnings("NullAway") // documents arrive with parts missing; the rules name them
    public PointDocument {
        legs = legs == null ? List.of() : legs.stream().filter(Objects::nonNull).toList();
    }

    /** Mass then, by whichever way it was recorded. */
    public @Nullable Double massThenKg() {
        if (massKg != null) {
            return massKg;
        }
        return startMassKg == null ? null : startMassKg - (fuelUsedKg == null ? 0 : fuelUsedKg);
    }
}
