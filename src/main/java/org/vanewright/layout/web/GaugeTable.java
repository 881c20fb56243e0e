package org.vanewright.layout.web;

import java.util.List;
import org.vanewright.engineering.gauge.Fit;
import org.vanewright.engineering.gauge.Gauge;
import org.vanewright.engineering.gauge.GaugeSettings;
import org.vanewright.engineering.gauge.RowGauges;
import org.vanewright.engineering.gauge.Slot;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.record.Revision;

/**
 * The gauges of a layout as JSON.
 *
 * @param slug of the layout
 * @param revision of the layout
 * @param sha256 of its canonical JSON
 * @param method how the figures come about
 * @param validity where they stop holding
 * @param settings as asked for
 * @param rows each row on each wing that carries it
 */
record GaugeTable(
        String slug,
        int revision,
        String sha256,
        String method,
        List<String> validity,
        GaugeSettings settings,
        List<Row> rows) {
    static final String METHOD =
            "Each gauge is a shell laid over the true section, rulings straight between the faces, a clearance off the skin."
                    + " At another station it is moved as a rigid body to where the gaps, squared and summed, are least; then"
                    + " the gap along the normal of the true skin counts, at both faces and every slot. From the root outward"
                    + " each gauge takes as many units as fit and is cut for the middle of its range.";

    static final List<String> VALIDITY = List.of(
            "It knows the section as recorded, not the wing as built: skin joints, rivets, dents, fabric sag and paint are"
                    + " not in it. Try each gauge dry at both ends of its range.",
            "Pushed home against the leading edge a slot stands up to the clearance farther aft.",
            "Bounds of length, width and wall are common practice, without a source.");

    /** @param row counts from 1 */
    record Row(int row, String name, Wing wing, SurfaceSide side, List<Item> gauges, List<RowGauges.LeftOut> leftOut) {}

    /**
     * One gauge.
     *
     * @param openMm most that it stands off beyond the clearance over its range
     * @param pressMm most of the clearance that is used up
     * @param placeMm most that a slot is off its distance along the skin
     */
    record Item(
            int gauge,
            int panel,
            double cutForStationMm,
            double fromStationMm,
            double toStationMm,
            List<Integer> devices,
            List<Integer> setByMeasure,
            double openMm,
            double pressMm,
            double placeMm,
            List<Slot> slots,
            double inboardFaceMm,
            double outboardFaceMm,
            double rearMm) {
        static Item of(Gauge g) {
            Fit fit = g.fit();
            return new Item(
                    g.number(),
                    g.panel() + 1,
                    g.cutForMm(),
                    g.fromMm(),
                    g.toMm(),
                    g.devices(),
                    g.byMeasure(),
                    fit.openMm(),
                    fit.pressMm(),
                    fit.placeMm(),
                    g.slots(),
                    g.inboardMm(),
                    g.outboardMm(),
                    g.rearMm());
        }
    }

    static GaugeTable of(Revision<LayoutDocument> layout, GaugeSettings settings, List<RowGauges> rows) {
        return new GaugeTable(
                layout.slug(),
                layout.number(),
                layout.sha256(),
                METHOD,
                VALIDITY,
                settings,
                rows.stream()
                        .map(r -> new Row(
                                r.row() + 1,
                                r.name(),
                                r.wing(),
                                r.side(),
                                r.gauges().stream().map(Item::of).toList(),
                                r.leftOut()))
                        .toList());
    }
}
