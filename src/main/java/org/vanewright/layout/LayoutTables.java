package org.vanewright.layout;

import java.util.List;
import org.springframework.stereotype.Component;
import org.vanewright.export.Columns;
import org.vanewright.export.RecordTable;
import org.vanewright.export.RecordTables;

/** Layouts in the export. */
@Component
class LayoutTables implements RecordTables<LayoutDocument> {
    @Override
    public String kind() {
        return "layout";
    }

    @Override
    public List<RecordTable<LayoutDocument, ?>> tables() {
        return List.of(layouts(), rows());
    }

    private static RecordTable<LayoutDocument, LayoutDocument> layouts() {
        return RecordTable.ofRecords(
                "layout",
                "layouts",
                "Which devices go where on which airframe",
                new Columns<LayoutDocument>()
                        .text("name", "What people call it", LayoutDocument::name)
                        .text("description", "What it is for", LayoutDocument::description)
                        .revision("airframe", "airframes", "Airframe", LayoutDocument::airframe)
                        .yesNo("invented", "Whether it is demonstration data", LayoutDocument::invented));
    }

    private static RecordTable<LayoutDocument, RowDocument> rows() {
        return RecordTable.ofParts(
                "layouts",
                "layout_rows",
                "Rows of devices along the span",
                "row",
                LayoutDocument::rows,
                new Columns<RowDocument>()
                        .text("name", "Such as Outer wing", RowDocument::name)
                        .revision("device", "devices", "Device", RowDocument::device)
                        .text("surface", "Name of the airframe's surface", RowDocument::surface)
                        .choice("side", "Upper or lower", RowDocument::side)
                        .number("from_mm", "mm", "Span station of the first unit's centre", RowDocument::fromMm)
                        .number("to_mm", "mm", "Span station that no unit's centre lies beyond", RowDocument::toMm)
                        .ratio(
                                "chord_fraction",
                                "Base centres at this fraction of the local chord",
                                RowDocument::chordFraction)
                        .number(
                                "arc_distance_mm",
                                "mm",
                                "Base centres at this distance along the skin from the leading edge",
                                RowDocument::arcDistanceMm)
                        .choice("arrangement", "How vanes are turned", RowDocument::arrangement)
                        .number(
                                "angle_deg",
                                "deg",
                                "Toe-in positive for co-rotating rows; size of the angle for pairs",
                                RowDocument::angleDeg)
                        .number("pitch_mm", "mm", "Along the span between unit centres", RowDocument::pitchMm)
                        .number(
                                "pair_gap_mm",
                                "mm",
                                "Between base centres of a pair of single-vane devices",
                                RowDocument::pairGapMm)
                        .choice("wings", "Both, mirrored, where empty", RowDocument::wings)
                        .choice(
                                "on_conflict",
                                "What becomes of units in keep-outs; move where empty",
                                RowDocument::onConflict)
                        .choice(
                                "register",
                                "What its template is laid to; the leading edge where empty",
                                RowDocument::register)
                        .ratio(
                                "register_chord_fraction",
                                "Chord fraction of the spar line, for that register",
                                RowDocument::registerChordFraction));
    }
}
