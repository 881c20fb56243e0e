package org.vanewright.layout;

import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.placement.ConflictPolicy;
import org.vanewright.engineering.placement.WingChoice;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.template.Register;
import org.vanewright.record.RecordUse;
import org.vanewright.record.RevisionRef;

/**
 * A row as it is recorded. Exactly one of {@code chordFraction} and {@code arcDistanceMm} is given.
 *
 * @param name such as "Outer wing"
 * @param device exact revision of the device
 * @param surface name of the airframe's surface
 * @param side upper or lower
 * @param fromMm span station of the first unit's centre
 * @param toMm span station that no unit's centre lies beyond
 * @param chordFraction base centres at this fraction of the local chord
 * @param arcDistanceMm base centres at this distance along the skin from the leading edge
 * @param arrangement how vanes are turned
 * @param angleDeg toe-in positive for co-rotating rows; size of the angle for pairs; absent for a device that holds a
 *     pair
 * @param pitchMm along the span between unit centres
 * @param pairGapMm between base centres of a pair of single-vane devices
 * @param wings absent means both, mirrored
 * @param onConflict absent means move
 * @param register absent means the leading edge
 * @param registerChordFraction of the spar line, for that register only
 */
public record RowDocument(
        @Nullable String name,
        @Nullable RevisionRef device,
        @Nullable String surface,
        @Nullable SurfaceSide side,
        @Nullable Double fromMm,
        @Nullable Double toMm,
        @Nullable Double chordFraction,
        @Nullable Double arcDistanceMm,
        @Nullable Arrangement arrangement,
        @Nullable Double angleDeg,
        @Nullable Double pitchMm,
        @Nullable Double pairGapMm,
        @Nullable WingChoice wings,
        @Nullable ConflictPolicy onConflict,
        @Nullable Register register,
        @Nullable Double registerChordFraction) {
    RowDocument relocated(UnaryOperator<RecordUse> to) {
        return new RowDocument(
                name,
                device == null
                        ? null
                        : to.apply(new RecordUse("devices", device)).ref(),
                surface,
                side,
                fromMm,
                toMm,
                chordFraction,
                arcDistanceMm,
                arrangement,
                angleDeg,
                pitchMm,
                pairGapMm,
                wings,
                onConflict,
                register,
                registerChordFraction);
    }
}
