package org.vanewright.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.VaneSide;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.RowDocument;
import org.vanewright.record.Revision;

/**
 * A device in place of that of a layout's row.
 *
 * @param device exact revision
 * @param chordFraction x/c of the base centre
 * @param pitchMm along the span; null keeps that of the row
 * @param angleDeg as a size; null keeps that of the row; a pair on one base has its own
 */
public record SuggestedRow(
        Revision<DeviceDocument> device,
        double chordFraction,
        @Nullable Double pitchMm,
        @Nullable Double angleDeg) {
    /** The layout with that row; what a row says of place along the span, side and keep-outs stays. */
    public LayoutDocument in(LayoutDocument layout, int index) {
        List<RowDocument> rows = new ArrayList<>(layout.rows());
        rows.set(index, in(rows.get(index)));
        return new LayoutDocument(
                layout.name(),
                layout.description(),
                layout.airframe(),
                rows,
                layout.invented(),
                layout.provenance(),
                layout.photographs());
    }

    private RowDocument in(RowDocument row) {
        Pair pair = device.content().pair();
        return new RowDocument(
                row.name(),
                device.ref(),
                row.surface(),
                row.side(),
                row.fromMm(),
                row.toMm(),
                chordFraction,
                null,
                arrangement(row),
                pair == null ? angle(row) : null,
                pitchMm == null ? row.pitchMm() : pitchMm,
                pair == null ? row.pairGapMm() : null,
                row.wings(),
                row.onConflict(),
                row.register(),
                row.registerChordFraction());
    }

    private @Nullable Double angle(RowDocument row) {
        boolean toeOut = row.angleDeg() != null && row.angleDeg() < 0;
        return angleDeg == null ? row.angleDeg() : Double.valueOf(toeOut ? -angleDeg : angleDeg);
    }

    /** A pair on one base makes its own; single vanes stand in pairs only where the row says how far apart. */
    private @Nullable Arrangement arrangement(RowDocument row) {
        Pair pair = device.content().pair();
        if (pair != null) {
            return Arrangement.ofPair(Objects.requireNonNullElse(pair.angleDeg(), 0.0));
        }
        boolean alone = row.arrangement() != null && row.arrangement().paired() && row.pairGapMm() == null;
        return alone ? Arrangement.CO_ROTATING : row.arrangement();
    }

    /** As a study looks at it, at the place along the span of the row whose place it takes. */
    RowTrial trial(RowTrial base, RowDocument row) {
        Pair pair = device.content().pair();
        VaneSide vane = VaneSide.of(Objects.requireNonNull(device.content().vane()));
        double own = pair == null || pair.angleDeg() == null ? 0 : Math.abs(pair.angleDeg());
        double angle = pair == null ? (angleDeg == null ? base.angleDeg() : angleDeg) : own;
        Arrangement arrangement = Objects.requireNonNullElse(arrangement(row), Arrangement.CO_ROTATING);
        return new RowTrial(
                base.index(),
                base.name(),
                base.surface(),
                base.side(),
                base.stationMm(),
                chordFraction,
                vane,
                angle,
                pitchMm == null ? base.pitchMm() : pitchMm,
                RowTrials.gapMm(arrangement, row.pairGapMm(), pair, vane, angle),
                base.vanes());
    }
}
