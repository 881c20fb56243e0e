package org.vanewright.layout.web;

import java.util.List;
import org.vanewright.engineering.placement.PlacementTolerance;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.layout.StationTolerance;
import org.vanewright.record.Revision;

/**
 * How far each device may be from its place, as JSON.
 *
 * @param slug of the layout
 * @param revision of the layout
 * @param sha256 of its canonical JSON
 * @param method how the figures come about
 * @param sources citations
 * @param validity where they stop holding
 * @param stations every device
 */
record ToleranceTable(
        String slug,
        int revision,
        String sha256,
        String method,
        List<String> sources,
        List<String> validity,
        List<StationTolerance> stations) {
    private static final List<String> SOURCES = List.of(
            "B. J. Wendt, Initial Circulation and Peak Vorticity Behavior of Vortices Shed from Airfoil Vortex Generators,"
                    + " NASA/CR-2001-211144, 2001, as restated by J. C. Dudek, AIAA Journal 44(8), 2006 (quoted second-hand)",
            "H. Schlichting, Boundary-Layer Theory, 7th ed., 1979, chapter XXI (power law for the flat plate)");
    private static final List<String> VALIDITY = List.of(
            "A flat plate has no pressure gradient, and the fit is for vanes of aerofoil section: the figures grade care.",
            "The share of a tenth and the widest tolerances are engineering judgement, no source.");

    static ToleranceTable of(Revision<LayoutDocument> layout, LayoutPlanner planner) {
        return new ToleranceTable(
                layout.slug(),
                layout.number(),
                layout.sha256(),
                PlacementTolerance.METHOD,
                SOURCES,
                VALIDITY,
                StationTolerance.of(planner.plan(layout.content())));
    }
}
