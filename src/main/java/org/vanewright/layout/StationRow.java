package org.vanewright.layout;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.placement.Hand;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * One line of the station table.
 *
 * @param surface name of the surface
 * @param wing left or right
 * @param device number, from the root outward on that wing and surface
 * @param row counts from 1
 * @param rowName name of the row
 * @param side upper or lower
 * @param panel counts from 1, from the root
 * @param spanStationMm from the aircraft's centre line
 * @param chordMm local chord
 * @param chordFraction of the base centre
 * @param arcFromLeadingEdgeMm along the skin: what a tape measure laid on the wing reads
 * @param angleDeg toe-in positive
 * @param hand which way the leading edge points
 * @param skinRadiusMm along the chord; absent where the skin is straight
 * @param moved whether it had to give way
 */
public record StationRow(
        String surface,
        Wing wing,
        int device,
        int row,
        String rowName,
        SurfaceSide side,
        int panel,
        double spanStationMm,
        double chordMm,
        double chordFraction,
        double arcFromLeadingEdgeMm,
        double angleDeg,
        Hand hand,
        @Nullable Double skinRadiusMm,
        boolean moved) {

    /** Every station of a layout, by surface, wing and number. */
    public static List<StationRow> of(LayoutDocument layout, LayoutPlan plan) {
        List<StationRow> rows = new ArrayList<>();
        for (LayoutPlan.SurfacePlan surface : plan.surfaces()) {
            for (Station s : surface.placement().stations()) {
                String rowName = layout.rows().get(s.row()).name();
                rows.add(of(surface.name(), rowName == null ? "" : rowName, s));
            }
        }
        return rows;
    }

    private static StationRow of(String surface, String rowName, Station s) {
        return new StationRow(
                surface,
                s.wing(),
                s.number(),
                s.row() + 1,
                rowName,
                s.side(),
                s.panel() + 1,
                s.stationMm(),
                s.chordMm(),
                s.xOverC(),
                s.arcMm(),
                s.angleDeg(),
                s.hand(),
                Double.isFinite(s.skinRadiusMm()) ? s.skinRadiusMm() : null,
                s.moved());
    }
}
