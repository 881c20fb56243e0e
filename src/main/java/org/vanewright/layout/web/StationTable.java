package org.vanewright.layout.web;

import java.util.List;
import org.vanewright.engineering.placement.PlacementNote;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.layout.StationRow;
import org.vanewright.record.Revision;

/**
 * The station table as JSON.
 *
 * @param slug of the layout
 * @param revision of the layout
 * @param sha256 of its canonical JSON
 * @param method how the figures come about
 * @param stations every device
 * @param givenWay every unit that was moved or left out; {@code row} counts from 0 as in the document
 */
record StationTable(
        String slug,
        int revision,
        String sha256,
        String method,
        List<StationRow> stations,
        List<PlacementNote> givenWay) {
    static final String METHOD =
            "Positions are those of the centre of each base. Span stations count along the span from the aircraft's centre line. Distances from the"
                    + " leading edge follow the skin in the chordwise direction, by numerical integration along the section."
                    + " Angles are to the local chordwise direction, toe-in positive: leading edge towards the centre line.";

    static StationTable of(Revision<LayoutDocument> layout, LayoutPlanner planner) {
        LayoutPlan plan = planner.plan(layout.content());
        List<PlacementNote> notes = plan.surfaces().stream()
                .flatMap(s -> s.placement().notes().stream())
                .toList();
        return new StationTable(
                layout.slug(), layout.number(), layout.sha256(), METHOD, StationRow.of(layout.content(), plan), notes);
    }
}
