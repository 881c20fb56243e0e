package org.vanewright.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.DeviceDesign.Vane;
import org.vanewright.engineering.solid.VaneSide;
import org.vanewright.record.Revision;

/** The rows that are tried: each device at each chord position, pitch and angle of a grid, within a person's limits. */
final class Candidates {
    private static final double STEP = 0.01;
    private static final double[] PITCHES_IN_HEIGHTS = {5, 6, 8, 10, 12, 15};
    private static final double[] ANGLES_DEG = {10, 12, 15, 18, 20};
    private static final double PITCH_GRID_MM = 5;

    private Candidates() {}

    static List<SuggestedRow> of(List<Revision<DeviceDocument>> devices, SuggestionQuery query) {
        List<SuggestedRow> rows = new ArrayList<>();
        for (Revision<DeviceDocument> device : devices) {
            Vane vane = device.content().vane();
            if (vane != null && (query.devices().isEmpty() || query.devices().contains(device.slug()))) {
                TreeSet<Double> pitches = pitches(VaneSide.of(vane).heightMm(), query);
                for (Double angle : angles(device.content().pair(), query)) {
                    for (Double pitch : pitches) {
                        fractions(query).forEach(x -> rows.add(new SuggestedRow(device, x, pitch, angle)));
                    }
                }
            }
        }
        return rows;
    }

    private static List<Double> fractions(SuggestionQuery query) {
        List<Double> fractions = new ArrayList<>();
        for (double x = query.leastFraction(); x <= query.mostFraction() + 1e-9; x += STEP) {
            fractions.add(Math.round(x * 1000) / 1000.0);
        }
        return fractions;
    }

    private static TreeSet<Double> pitches(double heightMm, SuggestionQuery query) {
        TreeSet<Double> grid = new TreeSet<>();
        for (double heights : PITCHES_IN_HEIGHTS) {
            grid.add(Math.max(PITCH_GRID_MM, Math.round(heights * heightMm / PITCH_GRID_MM) * PITCH_GRID_MM));
        }
        return within(grid, query.leastPitchMm(), query.mostPitchMm());
    }

    private static TreeSet<Double> angles(@Nullable Pair pair, SuggestionQuery query) {
        if (pair != null && pair.angleDeg() != null) {
            double own = Math.abs(pair.angleDeg());
            boolean allowed = (query.leastAngleDeg() == null || own >= query.leastAngleDeg())
                    && (query.mostAngleDeg() == null || own <= query.mostAngleDeg());
            return allowed ? new TreeSet<>(List.of(own)) : new TreeSet<>();
        }
        TreeSet<Double> grid = new TreeSet<>(Arrays.stream(ANGLES_DEG).boxed().toList());
        return within(grid, query.leastAngleDeg(), query.mostAngleDeg());
    }

    /** What of a grid lies within limits, and the limits themselves. */
    private static TreeSet<Double> within(TreeSet<Double> grid, @Nullable Double least, @Nullable Double most) {
        TreeSet<Double> values = new TreeSet<>(grid);
        if (least != null) {
            values.removeIf(v -> v < least);
            values.add(least);
        }
        if (most != null) {
            values.removeIf(v -> v > most);
            values.add(most);
        }
        return values;
    }
}
