package org.vanewright.engineering.placement;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.wing.KeepOut;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;

/** Sets the units of one row along the span and makes those in conflict give way. */
final class RowPlacer {
    private static final double TOLERANCE_MM = 1e-6;
    private static final String OFF_SKIN = "the base would run off the skin at the leading or trailing edge";

    /** Per panel; room along the chord changes steadily between its ends. */
    private static final int SKIN_SAMPLES = 32;

    private final RowPlan row;
    private final WingShape wing;
    private final WingSkin skin;
    private final Unit unit;
    private final List<PlacementNote> notes = new ArrayList<>();

    RowPlacer(RowPlan row, WingShape wing, WingSkin skin) {
        this.row = row;
        this.wing = wing;
        this.skin = skin;
        this.unit = Unit.of(row);
    }

    /** A unit's final place and whether it had to move. */
    record Placed(double centreMm, boolean moved) {}

    List<PlacementNote> notes() {
        return notes;
    }

    /** Places of all units that found one, root outward. */
    List<Placed> place() {
        BlockedSpans blocked = fixedObstacles();
        List<Placed> placed = new ArrayList<>();
        List<Double> displaced = new ArrayList<>();
        for (double centre : requestedCentres()) {
            if (blocked.isFree(centre) && fitsChord(centre)) {
                placed.add(new Placed(centre, false));
            } else {
                displaced.add(centre);
            }
        }
        if (!displaced.isEmpty()) {
            blockOffSkin(blocked);
        }
        placed.forEach(p -> blockAround(blocked, p.centreMm()));
        resolveAll(displaced, blocked, placed);
        placed.sort((a, b) -> Double.compare(a.centreMm(), b.centreMm()));
        return placed;
    }

    private List<Double> requestedCentres() {
        int count = (int) Math.floor((row.toMm() - row.fromMm() + TOLERANCE_MM) / row.pitchMm()) + 1;
        List<Double> centres = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            centres.add(Math.min(row.fromMm() + i * row.pitchMm(), row.toMm()));
        }
        return centres;
    }

    private BlockedSpans fixedObstacles() {
        double half = unit.halfSpanMm();
        BlockedSpans blocked = new BlockedSpans();
        for (KeepOut keepOut : wing.keepOuts()) {
            if (keepOut.on(row.side())) {
                blocked.block(keepOut.fromMm() - half, keepOut.toMm() + half, "keep-out: " + keepOut.reason());
            }
        }
        List<WingPanel> panels = wing.panels();
        for (int i = 1; i < panels.size(); i++) {
            double joint = panels.get(i).innerStationMm();
            blocked.block(joint - half, joint + half, "across a panel joint");
        }
        double far = 2 * half + 1;
        blocked.block(wing.innerStationMm() - far, wing.innerStationMm() + half, "beyond the inner end");
        blocked.block(wing.outerStationMm() - half, wing.outerStationMm() + far, "beyond the outer end");
        return blocked;
    }

    /** Where a base would run off the skin; between joints, which stand in the way themselves. */
    private void blockOffSkin(BlockedSpans blocked) {
        double half = unit.halfSpanMm();
        for (WingPanel panel : wing.panels()) {
            double from = Math.max(row.fromMm(), panel.innerStationMm() + half);
            double to = Math.min(row.toMm(), panel.outerStationMm() - half);
            if (from <= to) {
                blockOffSkin(blocked, from, to, half);
            }
        }
    }

    private void blockOffSkin(BlockedSpans blocked, double fromMm, double toMm, double beyondMm) {
        double start = fromMm - beyondMm;
        double before = fromMm;
        boolean fitted = fitsChord(fromMm);
        for (int i = 1; i <= SKIN_SAMPLES; i++) {
            double here = fromMm + (toMm - fromMm) * i / SKIN_SAMPLES;
            boolean fits = fitsChord(here);
            if (fits && !fitted) {
                blocked.block(start, lastFitting(here, before), OFF_SKIN);
            } else if (fitted && !fits) {
                start = lastFitting(before, here);
            }
            before = here;
            fitted = fits;
        }
        if (!fitted) {
            blocked.block(start, toMm + beyondMm, OFF_SKIN);
        }
    }

    /** Halves the way from a station where the base fits to one where it does not. */
    private double lastFitting(double fittingMm, double offMm) {
        double fitting = fittingMm;
        double off = offMm;
        while (Math.abs(off - fitting) > TOLERANCE_MM) {
            double middle = (fitting + off) / 2;
            if (fitsChord(middle)) {
                fitting = middle;
            } else {
                off = middle;
            }
        }
        return fitting;
    }

    private void blockAround(BlockedSpans blocked, double centreMm) {
        double width = 2 * unit.halfSpanMm();
        blocked.block(centreMm - width, centreMm + width, "taken by a neighbour");
    }

    /** Those with the shortest way first, so that one unit does not take the only place of its neighbour. */
    private void resolveAll(List<Double> displaced, BlockedSpans blocked, List<Placed> placed) {
        List<Double> waiting = new ArrayList<>(displaced);
        while (!waiting.isEmpty()) {
            Double next = Collections.min(waiting, Comparator.comparingDouble(c -> wayMm(c, blocked)));
            waiting.remove(next);
            resolve(next, blocked, placed);
        }
        notes.sort(Comparator.comparingDouble(PlacementNote::requestedMm));
    }

    private double wayMm(double centre, BlockedSpans blocked) {
        Double place = blocked.nearestFree(centre, row.fromMm(), row.toMm());
        return place == null ? Double.MAX_VALUE : Math.abs(place - centre);
    }

    private void resolve(double centre, BlockedSpans blocked, List<Placed> placed) {
        String reason = reasonAt(centre, blocked);
        Double place =
                row.onConflict() == ConflictPolicy.MOVE ? blocked.nearestFree(centre, row.fromMm(), row.toMm()) : null;
        if (place != null && !fitsChord(place)) {
            place = null;
        }
        notes.add(new PlacementNote(row.index(), centre, place, reason));
        if (place != null) {
            placed.add(new Placed(place, true));
            blockAround(blocked, place);
        }
    }

    private String reasonAt(double centre, BlockedSpans blocked) {
        String reason = blocked.reasonAt(centre);
        return reason != null ? reason : OFF_SKIN;
    }

    /** The whole base lies between leading and trailing edge at every member of the unit. */
    private boolean fitsChord(double centreMm) {
        return unit.members().stream().allMatch(m -> fits(centreMm + m.offsetMm()));
    }

    private boolean fits(double stationMm) {
        WingSkin.@Nullable Spot spot = skin.locate(row.side(), stationMm, row.position());
        return spot != null
                && spot.arcMm() >= unit.halfChordMm() - TOLERANCE_MM
                && spot.arcMm() <= spot.wholeArcMm() - unit.halfChordMm() + TOLERANCE_MM;
    }

    Unit unit() {
        return unit;
    }
}
